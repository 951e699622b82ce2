using System.Text;
using Cablewright.Contract;
using Cablewright.Engine;
using Cablewright.Engine.Designs;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Storage;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>
/// Writes what concerns the whole contract: what it is for, its limits, and every code that an answer can carry.
/// </summary>
internal sealed class Overview : IOpenApiDocumentTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(
        OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "Cablewright",
            Version = Release.EngineVersion,
            Summary = "Assesses aftermarket vehicle audio power wiring.",
            Description = Description(),
        };
        document.Servers = [new OpenApiServer { Url = "/", Description = "The service that serves this contract." }];
        SecurityDetails.AddScheme(document);
        document.Tags = Tag.All.Select(tag => new OpenApiTag { Name = tag.Name, Description = tag.Description }).ToHashSet();
        return Task.CompletedTask;
    }

    private static string Description()
    {
        var text = new StringBuilder();
        text.Append(
            "Current draw, voltage drop, heat and fuse protection of a build's wiring, with the reasons and sources of every "
            + "verdict, and the choice of what was left open. Wiring can burn a vehicle: "
            + "an answer is an aid to judgement and not an approval; "
            + "local codes, makers' instructions and a qualified installer's judgement come first.\n\n");
        text.Append(
            "Quantities come in as text with a unit (`\"16 ft\"`) and go out as numbers whose name carries the unit "
            + "(`lengthMetres`).\n\n");
        text.Append(
            "In a request `null` for a member that may be left out says the same as leaving it out: a fuse of `null` is chosen, "
            + "and one that is not fitted says so. Answers hold no `null`.\n\n");
        text.Append(
            "Answers are compressed with `br` or `gzip` where `Accept-Encoding` allows it, and HEAD is answered wherever GET "
            + "is.\n\n");
        text.Append(
            "Every answer that is not 2xx or 304 is a problem document (RFC 9457), with one exception: a request of which the "
            + "server cannot read the first line or the headers never gets as far as this contract, and is answered with an "
            + "empty body and `400`, `408` (they came too slowly), `414` (too long an address), `431` (too many or too long "
            + "headers) or `505` (another version of HTTP).\n\n");
        AppendTable(text, "Limits of a request", "Limit", "Value", Limits());
        AppendTable(
            text, "Kinds of problem", "Code", "Meaning",
            ProblemKinds.All.Select(kind => (Code(kind.Code), $"{kind.Status}: {kind.Title}. {kind.Meaning}")));
        AppendTable(
            text, "Codes of single faults", "Code", "Meaning", FaultKinds.All.Select(kind => (Code(kind.Code), kind.Meaning)));
        AppendTable(
            text, "Codes of findings", "Code", "Meaning", FindingCodes.All.Select(code => (Code(code.Code), code.Meaning)));
        return text.ToString().TrimEnd();
    }

    /// <summary>What the operator has not set otherwise.</summary>
    private static StorageSettings Usual { get; } = new();

    private static IEnumerable<(string, string)> Limits() =>
    [
        ("body", $"{ContractLimits.BodyBytes / 1024} KB"),
        ("array of builds", $"{ContractLimits.BatchBytes / 1024 / 1024} MB and {ContractLimits.BatchBuilds} builds"),
        ("one build of a batch", $"{ContractLimits.BodyBytes / 1024} KB"),
        ("nesting of objects and arrays", $"{ContractLimits.JsonDepth}"),
        ("amplifiers", $"1 to {ContractLimits.Amplifiers}; without a shop's key {ContractLimits.AmplifiersWithoutKey}"),
        ("runs", $"1 to {ContractLimits.Runs}; without a shop's key {ContractLimits.RunsWithoutKey}"),
        ("batteries", $"{ContractLimits.Batteries}; without a shop's key {ContractLimits.BatteriesWithoutKey}"),
        ("points of an alternator's output curve", $"{ContractLimits.FewestOutputPoints} to {ContractLimits.OutputPoints}"),
        ("resistances with a time constant in one battery", $"{ContractLimits.Polarisations}"),
        ("capacitors", $"{ContractLimits.Capacitors}"),
        ("junctions described", $"{ContractLimits.Junctions}"),
        ("conductors in parallel in one run", $"1 to {ContractLimits.ParallelConductors}"),
        ("sizes to choose from", $"1 to {ContractLimits.Sizes}"),
        ("parts of a kit", $"1 to {ContractLimits.KitParts}"),
        ("kits of a shop, where the operator sets nothing else",
            $"{Usual.KitsPerShop}, of {Usual.KitBytesPerShop / 1024 / 1024} MB together"),
        ("records of a shop, likewise", $"{Usual.RecordsPerShop}, of {Usual.RecordBytesPerShop / 1024 / 1024} MB together"),
        ("kits on a page", $"1 to {ContractLimits.KitsOnPage}"),
        ("name", $"{ContractLimits.NameLength} characters"),
        ("id", Contract.Schema.IdentifierAttribute.Accepted),
        ("faults listed in an answer", $"{ShapeReader.MostFaults}"),
        ("text of a quantity", $"{ContractLimits.QuantityLength} characters"),
    ];

    private static string Code(string code) => $"`{code}`";

    private static void AppendTable(
        StringBuilder text, string title, string left, string right, IEnumerable<(string, string)> rows)
    {
        text.Append("<details><summary>").Append(title).Append("</summary>\n\n| ").Append(left).Append(" | ").Append(right)
            .Append(" |\n| --- | --- |\n");
        foreach ((string one, string other) in rows) text.Append("| ").Append(one).Append(" | ").Append(other).Append(" |\n");
        text.Append("\n</details>\n\n");
    }
}
