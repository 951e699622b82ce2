using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Support;
using Json.Schema;

namespace Cablewright.Service.Tests.Documents;

/// <summary>The shapes of the committed contract as JSON schemas (2020-12), as OpenAPI 3.1 says they are.</summary>
public static partial class ContractSchemas
{
    private static readonly EvaluationOptions Strict = new() { OutputFormat = OutputFormat.List };

    private static readonly Dictionary<string, JsonSchema> Known = Read();

    /// <summary>What the schema of a shape finds wrong with a document; empty where it is valid.</summary>
    public static IReadOnlyList<string> Faults(string shape, JsonNode? document)
    {
        EvaluationResults results = Known[shape].Evaluate(WithPlainSpaces(document), Strict);
        if (results.IsValid) return [];
        string[] faults = [.. results.Details.Where(detail => detail.HasErrors).Select(
            detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}")];
        return faults.Length > 0 ? faults : ["invalid"];
    }

    /// <summary>
    /// The contract's patterns mean white space as ECMA-262 does, no-break spaces and their like included; .NET's expressions in
    /// that mode know those of ASCII only.
    /// </summary>
    private static JsonNode? WithPlainSpaces(JsonNode? document) =>
        document is null ? null : JsonNode.Parse(OtherSpace().Replace(document.ToJsonString(), " "));

    [GeneratedRegex(@"(?<=(?:^|[^\\])(?:\\\\)*)\\u(00A0|1680|20(0[0-9A]|28|29|2F|5F)|3000|FEFF)", RegexOptions.IgnoreCase)]
    private static partial Regex OtherSpace();

    private static Dictionary<string, JsonSchema> Read()
    {
        JsonNode shapes = JsonNode.Parse(File.ReadAllText(Repository.Contract))!["components"]!["schemas"]!;
        string definitions = shapes.ToJsonString().Replace("#/components/schemas/", "#/$defs/");
        return shapes.AsObject().ToDictionary(
            shape => shape.Key,
            shape => JsonSchema.FromText($$"""
                {
                  "$schema": "https://json-schema.org/draft/2020-12/schema", "$ref": "#/$defs/{{shape.Key}}",
                  "$defs": {{definitions}}
                }
                """));
    }
}
