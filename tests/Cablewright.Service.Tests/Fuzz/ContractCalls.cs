using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Every call of the published contract, with right requests of each.</summary>
internal static class ContractCalls
{
    public const string Shop = "demo";

    private static readonly JsonNode Contract = JsonNode.Parse(File.ReadAllText(Repository.Contract))!;

    private static readonly string[] Builds =
    [
        Support.Builds.Small,
        .. ExampleFiles.Names.Select(ExampleFiles.Request),
        CompleteBuild.WithAlternator.ToJsonString(),
        CompleteBuild.WithConverter.ToJsonString(),
    ];

    /// <summary>All of them, one for each kind of body.</summary>
    public static IReadOnlyList<ContractCall> All { get; } =
    [
        .. from path in Contract["paths"]!.AsObject()
           from operation in path.Value!.AsObject()
           from content in operation.Value!["requestBody"]?["content"]?.AsObject().Select(kind => kind.Key) ?? [""]
           select new ContractCall(path.Key, operation.Key.ToUpperInvariant(), content, operation.Value!),
    ];

    /// <summary>One of the calls, most often one that has a body.</summary>
    public static ContractCall AnyOne(Dice dice)
    {
        bool hasBody = dice.Chance(0.8);
        return dice.OneOf([.. All.Where(call => call.HasBody == hasBody)]);
    }

    /// <summary>A right body of a call, as a document; of a batch by lines one of its lines.</summary>
    public static JsonNode Body(ContractCall call, Dice dice)
    {
        JsonNode example = call.Details["requestBody"]!["content"]![call.ContentType]!["example"]!.DeepClone();
        JsonNode build = dice.Chance(0.02) ? RandomBuild.Of(dice) : JsonNode.Parse(dice.OneOf(Builds))!;
        switch (example)
        {
            case JsonArray list: list[0] = build; return list;
            case JsonObject whole when whole.ContainsKey("build"): whole["build"] = build; return whole;
            case JsonObject whole when whole.ContainsKey("builds"): whole["builds"]![0] = build; return whole;
            case JsonObject whole when whole.ContainsKey("runs"): return build;
            default: return example;
        }
    }

    /// <summary>An address of a call.</summary>
    public static string Address(ContractCall call, Dice dice)
    {
        string path = call.Path
            .Replace("{shop}", Shop, StringComparison.Ordinal)
            .Replace("{sku}", dice.OneOf("AK-150", "A", "no-such"), StringComparison.Ordinal)
            .Replace("{id}", dice.OneOf("2026.2", "asm_" + new string('0', 64)), StringComparison.Ordinal);
        string[] query = call.Path.EndsWith("/quick", StringComparison.Ordinal)
            ? ["ratedOutput=1000%20W", "length=16%20ft", .. dice.Some(dice.Below(4), (string[])
                ["size=4%20AWG", "material=copper", "chargingVoltage=13.8%20V", "efficiency=80%20%25", "amplifierClass=D",
                    "programme=sine", "units=metric"])]
            : dice.Some(dice.Below(2), [.. call.Queries.Select(name => name + "=" + dice.OneOf("true", "20", "false"))]);
        return query.Length == 0 ? path : path + "?" + string.Join('&', query);
    }
}

/// <summary>One call of the contract.</summary>
/// <param name="Path">Its path, with the names of what varies in braces.</param>
/// <param name="Method">Its method.</param>
/// <param name="ContentType">The media type of its body; empty without one.</param>
/// <param name="Details">What the contract says of it.</param>
internal sealed record ContractCall(string Path, string Method, string ContentType, JsonNode Details)
{
    public bool HasBody => ContentType.Length > 0;

    /// <summary>Whether its body has one document a line.</summary>
    public bool HasLines => ContentType == "application/x-ndjson";

    /// <summary>The names of its query parameters.</summary>
    public IEnumerable<string> Queries => (Details["parameters"]?.AsArray() ?? [])
        .Where(parameter => (string)parameter!["in"]! == "query").Select(parameter => (string)parameter!["name"]!);

    /// <summary>The schema of an answer of some status and media type; <c>null</c> where the contract has none such.</summary>
    public JsonNode? Schema(int status, string mediaType) =>
        Details["responses"]![$"{status}"]?["content"]?[mediaType]?["schema"];

    /// <summary>Whether the contract has an answer of this status.</summary>
    public bool Answers(int status) => Details["responses"]![$"{status}"] is not null;
}

/// <summary>One request, to be damaged.</summary>
internal sealed class FuzzRequest
{
    public required string Method { get; set; }

    public required string Address { get; set; }

    public required string ContentType { get; set; }

    /// <summary>The body; <c>null</c> for none.</summary>
    public byte[]? Body { get; set; }

    public List<(string Name, string Value)> Headers { get; } = [];

    public HttpRequestMessage ToMessage()
    {
        var message = new HttpRequestMessage(new HttpMethod(Method), Address);
        if (Body is not null)
        {
            message.Content = new ByteArrayContent(Body);
            if (ContentType.Length > 0) message.Content.Headers.TryAddWithoutValidation("Content-Type", ContentType);
        }

        foreach ((string name, string value) in Headers)
        {
            if (!name.StartsWith("Content-", StringComparison.Ordinal)) message.Headers.TryAddWithoutValidation(name, value);
            else message.Content?.Headers.TryAddWithoutValidation(name, value);
        }

        return message;
    }

    /// <summary>All of it in writing, what is no text in the body escaped.</summary>
    public override string ToString() => string.Join('\n', [
        $"{Method} {Address}", $"Content-Type: {ContentType}", .. Headers.Select(header => $"{header.Name}: {header.Value}"), "",
        Body is null ? "" : Uri.UnescapeDataString(Encoding.Latin1.GetString(Body))]);
}
