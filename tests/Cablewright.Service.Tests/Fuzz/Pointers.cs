using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Where the JSON pointers of an answer lead.</summary>
internal static class Pointers
{
    /// <summary>
    /// Whether a pointer leads to something that a document states, or to a member that its type has and that is left out there.
    /// </summary>
    /// <param name="pointer">The pointer.</param>
    /// <param name="document">What was sent.</param>
    /// <param name="type">Its type in the contract.</param>
    public static bool Leads(string pointer, JsonNode? document, Type type)
    {
        if (pointer.Length > 0 && pointer[0] != '/') return false;
        JsonNode? at = document;
        foreach (string step in pointer.Split('/').Skip(1))
        {
            if (IsList(type))
            {
                // An empty list stands for one assumed item, as an absent one does; the place after the last is written "-".
                JsonArray list = at is JsonArray { Count: > 0 } items ? items : [null];
                int index = 0;
                if (step != "-" && !int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out index)) return false;
                if (index >= list.Count) return false;
                at = step == "-" ? null : list[index];
            }
            else
            {
                at = (at as JsonObject)?[step];
            }

            if (TypeBelow(type, step) is not { } below) return false;
            type = below;
        }

        return true;
    }

    /// <summary>Every pointer in an answer.</summary>
    public static IEnumerable<string> In(JsonNode answer) => JsonParts.Below(answer)
        .Where(node => node.Parent is JsonObject && node.GetPropertyName() == "pointer")
        .Select(node => (string)node!);

    /// <summary>The type of the item or member that a step of a pointer leads to; <c>null</c> where there is none.</summary>
    public static Type? TypeBelow(Type type, string step) => IsList(type)
        ? type.GetGenericArguments()[0]
        : type.GetProperties()
            .FirstOrDefault(member => JsonNamingPolicy.CamelCase.ConvertName(member.Name) == step)?.PropertyType;

    /// <summary>Whether a type of the contract is a list.</summary>
    public static bool IsList(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>);
}
