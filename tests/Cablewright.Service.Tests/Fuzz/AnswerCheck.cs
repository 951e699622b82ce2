using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Contract.Builds;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>What every answer to one build has to be.</summary>
internal static class AnswerCheck
{
    private static readonly string[] WorstFirst = ["fail", "caution", "info"];

    /// <summary>What is wrong with an answer; empty where all is well.</summary>
    public static IReadOnlyList<string> Troubles(Answer answer, string body)
    {
        if (answer.Status is not (200 or 422)) return [$"status {answer.Status}: {answer.Text}"];
        JsonNode told, sent = JsonNode.Parse(body)!;
        try
        {
            told = answer.Json;
        }
        catch (JsonException fault)
        {
            return [$"no JSON: {fault.Message}"];
        }

        return
        [
            .. ContractSchemas.Faults(answer.Status == 200 ? "Assessment" : "Problem", told).Select(fault => "schema: " + fault),
            .. Pointers.In(told).Where(pointer => !Pointers.Leads(pointer, sent, typeof(Build)))
                .Select(pointer => $"the pointer {pointer} leads nowhere"),
            .. answer.Status == 200 ? OfAssessment(told, sent) : [],
        ];
    }

    private static IEnumerable<string> OfAssessment(JsonNode told, JsonNode sent)
    {
        string[] severities = [.. told["findings"]!.AsArray().Select(finding => (string)finding!["severity"]!)];
        string worst = severities.MinBy(severity => Array.IndexOf(WorstFirst, severity)) ?? "pass";
        string verdict = (string)told["verdict"]!;
        if (verdict != (worst == "info" ? "pass" : worst)) yield return $"the verdict {verdict} beside the finding {worst}";
        if (!severities.SequenceEqual(severities.OrderBy(severity => Array.IndexOf(WorstFirst, severity))))
            yield return "the worst finding is not the first";
        foreach (string list in (string[])["amplifiers", "runs"])
        {
            string[] ids = Ids(sent, list);
            if (!Ids(told, list).Take(ids.Length).SequenceEqual(ids)) yield return $"the {list} are not those of the build";
        }
    }

    private static string[] Ids(JsonNode whole, string list) => [.. whole[list]!.AsArray().Select(item => (string)item!["id"]!)];
}
