using Cablewright.Contract.Reference;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/sources</c>.</summary>
internal static class SourceTables
{
    private static readonly JsonAnswer Table = TaggedAnswer.Fixed(Read(), AnswerJson.Shapes.SourceReference);

    public static Operation Operation => new(
        "readSources", Tag.Reference, "Read the sources", "Every source, and which figures rest on it.")
    {
        IsCacheable = true,
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/reference/sources", Answer).DescribedAs<SourceReference>(Operation);

    private static JsonAnswer Answer() => Table;

    private static SourceReference Read() => new()
    {
        Sources = [.. OfRulesets().Concat(OfConductors()).Concat(OfFuses()).Concat(OfBatteries())
            .GroupBy(use => (use.Source, use.Provenance))
            .OrderBy(source => source.Key.Source, StringComparer.Ordinal)
            .ThenBy(source => source.Key.Provenance, StringComparer.Ordinal)
            .Select(source => new SourceEntry
            {
                Source = source.Key.Source,
                Provenance = source.Key.Provenance,
                Figures = [.. source.Select(use => use.Figure)],
            })],
    };

    private static IEnumerable<Use> OfRulesets() =>
        from ruleset in RulesetLibrary.All
        from use in ruleset.Figures
            .Select(figure => new Use(figure.Source, figure.Provenance, $"ruleset {ruleset.Id}: {figure.Id}"))
            .Append(new Use(
                ruleset.IsolatorRatings.Amps.Source, ruleset.IsolatorRatings.Amps.Provenance,
                $"ruleset {ruleset.Id}: ratings of isolators"))
        select use;

    private static IEnumerable<Use> OfConductors()
    {
        ConductorReference table = ConductorTables.Read();
        return
        [
            .. table.Sizes.Select(row => new Use(row.Source, row.Provenance, $"size: {row.Size}")),
            .. table.Materials.Select(row => new Use(row.Source, row.Provenance, $"material: {row.Material.Word()}")),
            .. table.Ampacity.Select(row => new Use(
                row.Source, row.Provenance, FormattableString.Invariant($"ampacity: {row.Size}, {row.InsulationCelsius} C"))),
            .. table.Figures.Select(row => new Use(row.Source, row.Provenance, $"figure: {row.Name}")),
        ];
    }

    private static IEnumerable<Use> OfFuses() =>
        from row in FuseTables.Read().Families
        let name = row.Family.Word()
        from use in new[]
        {
            new Use(row.RatingsAmps.Source, row.RatingsAmps.Provenance, $"fuse family {name}: ratings"),
            Of(row.VoltageRatingVolts, name, "voltage rating"),
            Of(row.ContinuousUseFactor, name, "continuous-use factor"),
            Of(row.DropAtRatingVolts, name, "drop at rating"),
            Of(row.OpeningBandUncertainty, name, "uncertainty of the opening band"),
            Of(row.ArcingSeconds, name, "arcing time"),
        }.Concat(row.InterruptingRatings.Select(rating => new Use(
            rating.Source, rating.Provenance,
            FormattableString.Invariant($"fuse family {name}: interrupting rating at {rating.Volts} V"))))
        .Concat(row.OpeningBand.Select(point => new Use(
            point.Source, point.Provenance,
            FormattableString.Invariant($"fuse family {name}: opening at {point.ShareOfRating} of rating"))))
        .Concat(row.TemperatureDerating.Select(point => new Use(
            point.Source, point.Provenance, FormattableString.Invariant($"fuse family {name}: derating at {point.Celsius} C"))))
        select use;

    private static IEnumerable<Use> OfBatteries() => BatteryTables.Read().RestVoltages.Select(row => new Use(
        row.Source, row.Provenance,
        FormattableString.Invariant($"rest voltage: {row.Chemistry.Word()}, {row.StateOfCharge * 100} %")));

    private static Use Of(SourcedFigure figure, string family, string what) =>
        new(figure.Source, figure.Provenance, $"fuse family {family}: {what}");

    private sealed record Use(string Source, string Provenance, string Figure);
}
