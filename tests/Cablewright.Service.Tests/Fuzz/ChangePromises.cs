using System.Globalization;
using System.Text.Json.Nodes;
using Cablewright.Contract.Builds;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>What an answer says would become of the build after a change, and the build with that change made.</summary>
internal static class ChangePromises
{
    /// <summary>The changes that an answer names, each as a body to send.</summary>
    public static IEnumerable<(JsonNode Change, string Body)> In(JsonNode answer, string body) =>
        (answer["feasibility"]?["changes"]?.AsArray() ?? []).Append(answer["feasibility"]?["nearest"]).OfType<JsonNode>()
            .Select(change => (change, Made(change, body)));

    /// <summary>What the answer to the changed build does not keep of what was promised.</summary>
    /// <remarks>
    /// Only that a change which stands stands: what is open is chosen with less work while changes are looked for, so that
    /// another choice may leave other cautions.
    /// </remarks>
    public static IEnumerable<string> Broken(JsonNode change, JsonNode answer)
    {
        if ((string)change["verdict"]! != "fail" && (string)answer["verdict"]! == "fail")
            yield return $"a change of kind {change["kind"]} gives fail, not {change["verdict"]} as promised";
    }

    private static string Made(JsonNode change, string body)
    {
        JsonNode build = JsonNode.Parse(body)!;
        foreach (JsonNode? edit in change["edits"]!.AsArray()) Apply((string)edit!["pointer"]!, (string?)edit["to"], build);
        return build.ToJsonString();
    }

    private static void Apply(string pointer, string? to, JsonNode build)
    {
        string[] steps = pointer.Split('/')[1..];
        (JsonNode at, Type type) = (build, typeof(Build));
        for (int i = 0; i < steps.Length; i++)
        {
            Type next = Pointers.TypeBelow(type, steps[i])!;
            bool isLast = i == steps.Length - 1;
            JsonNode? value = isLast ? Written(to, next) : Pointers.IsList(next) ? new JsonArray() : new JsonObject();
            switch (at)
            {
                case JsonArray list when steps[i] == "-": list.Add(value); value = list[^1]; break;
                case JsonArray list: value = list[int.Parse(steps[i], CultureInfo.InvariantCulture)]; break;
                case JsonObject whole when isLast && value is null: whole.Remove(steps[i]); break;
                case JsonObject whole when isLast: whole[steps[i]] = value; break;
                case JsonObject whole: value = whole[steps[i]] ??= value; break;
            }

            (at, type) = (value!, next);
        }
    }

    private static JsonNode? Written(string? to, Type type) => (Nullable.GetUnderlyingType(type) ?? type) switch
    {
        _ when to is null => null,
        { } number when number == typeof(int) || number == typeof(double) || number == typeof(bool) => JsonNode.Parse(to),
        _ => to,
    };
}
