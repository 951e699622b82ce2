using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Makes a document smaller, part by part, for as long as it does what it did.</summary>
internal static class Shrinking
{
    private const int MostTrials = 400;

    /// <summary>The smallest document found.</summary>
    /// <param name="document">A document that does it.</param>
    /// <param name="doesIt">Whether a smaller one does it still.</param>
    public static async Task<string> Shrink(string document, Func<string, Task<bool>> doesIt)
    {
        int trials = 0;
        for (bool smaller = true; smaller;)
        {
            smaller = false;
            for (int part = 0; trials < MostTrials && Without(document, part) is { } less; trials++)
            {
                if (!await doesIt(less))
                {
                    part++;
                    continue;
                }

                document = less;
                smaller = true;
            }
        }

        return document;
    }

    /// <summary>The document without one of its parts, the outermost first, or <c>null</c> where it has no such part.</summary>
    private static string? Without(string document, int part)
    {
        JsonNode whole = JsonNode.Parse(document)!;
        JsonNode? removed = JsonParts.Below(whole).ElementAtOrDefault(part);
        switch (removed?.Parent)
        {
            case JsonObject parent: parent.Remove(removed.GetPropertyName()); break;
            case JsonArray list: list.Remove(removed); break;
            default: return null;
        }

        return whole.ToJsonString();
    }
}

/// <summary>The parts of a document.</summary>
internal static class JsonParts
{
    /// <summary>Every value below a node, level by level.</summary>
    public static IEnumerable<JsonNode> Below(JsonNode whole)
    {
        for (JsonNode[] level = [.. Children(whole)]; level.Length > 0; level = [.. level.SelectMany(Children)])
        {
            foreach (JsonNode node in level) yield return node;
        }
    }

    private static IEnumerable<JsonNode> Children(JsonNode node) => node switch
    {
        JsonObject whole => whole.Select(member => member.Value).OfType<JsonNode>(),
        JsonArray list => list.OfType<JsonNode>(),
        _ => [],
    };
}
