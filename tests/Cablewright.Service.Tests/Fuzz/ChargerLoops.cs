using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>
/// A shape that ends the process with a stack overflow while the engine does not know it: chargers that feed each other in a
/// ring. It is tried unless the environment keeps it out; to be deleted once the engine answers it.
/// </summary>
internal static class ChargerLoops
{
    public const string KeepOutVariable = "CABLEWRIGHT_FUZZ_KEEP_OUT_CHARGER_LOOPS";

    /// <summary>Whether a build has that shape and is to be kept out.</summary>
    public static bool AreKeptOut(JsonObject build) =>
        Environment.GetEnvironmentVariable(KeepOutVariable) is { Length: > 0 } && Has(build);

    private static bool Has(JsonObject build)
    {
        JsonNode[] runs = [.. build["runs"]!.AsArray().Where(run => (string?)run!["side"] != "return").OfType<JsonNode>()];
        var groups = new Dictionary<string, string>();
        foreach (JsonNode run in runs.Where(run => !IsCharger(run)))
        {
            if (Ends(run).Any(end => end == "body")) continue;
            string[] roots = [.. Ends(run).Select(Root)];
            if (roots[0] != roots[1]) groups[roots[0]] = roots[1];
        }

        List<(string From, string To)> chargers =
            [.. runs.Where(IsCharger).Select(Ends).Select(ends => (Root(ends[0]), Root(ends[1])))];
        // What no charger feeds is in no ring, nor is what only such places feed.
        while (chargers.RemoveAll(charger => !chargers.Any(other => other.To == charger.From)) > 0) { }
        return chargers.Count > 0;

        string Root(string place) => groups.TryGetValue(place, out string? next) ? Root(next) : place;
    }

    private static bool IsCharger(JsonNode run) => (string?)run["isolator"]?["kind"] == "dc-dc-charger";

    private static string[] Ends(JsonNode run) => [(string)run["from"]!, (string)run["to"]!];
}
