using Cablewright.Contract.Reference;
using Cablewright.Engine.Data;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/fuses</c>.</summary>
internal static class FuseTables
{
    private static readonly JsonAnswer Table = TaggedAnswer.Fixed(Read(), AnswerJson.Shapes.FuseReference);

    public static Operation Operation => new(
        "readFuses", Tag.Reference, "Read the fuse tables",
        "Fuse families with their ratings and figures, with sources.")
    {
        IsCacheable = true,
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/reference/fuses", Answer).DescribedAs<FuseReference>(Operation);

    internal static FuseReference Read() => new() { Families = [.. RulesetLibrary.Newest.FuseFamilies.All.Select(Family)] };

    private static JsonAnswer Answer() => Table;

    private static FuseFamilyEntry Family(FuseFamily family) => new()
    {
        Family = family.Name,
        Standard = family.Standard,
        RatingsAmps = new SourcedFigures
        {
            Values = family.RatingsAmps.Values,
            Source = family.RatingsAmps.Source,
            Provenance = family.RatingsAmps.Provenance,
        },
        VoltageRatingVolts = Figure(family.VoltageRatingVolts),
        ContinuousUseFactor = Figure(family.ContinuousUseFactor),
        DropAtRatingVolts = Figure(family.DropAtRatingVolts),
        InterruptingRatingAmps = AtRatedVoltage(family),
        InterruptingRatings = [.. family.InterruptingRatings.Select(Interrupting)],
        OpeningBand = [.. family.TimeCurrentBand.Points.Select(Point)],
        OpeningBandUncertainty = Figure(family.TimeCurrentBand.Uncertainty),
        ArcingSeconds = Figure(family.TimeCurrentBand.ArcingSeconds),
        TemperatureDerating = [.. family.TemperatureDerating.Select(Derating)],
    };

    private static SourcedFigure AtRatedVoltage(FuseFamily family)
    {
        InterruptingRating rating = family.InterruptingAt(family.VoltageRatingVolts.Value);
        return new SourcedFigure { Value = rating.Amps, Source = rating.Source, Provenance = rating.Provenance };
    }

    private static InterruptingEntry Interrupting(InterruptingRating rating) => new()
    {
        Volts = rating.Volts,
        Amps = rating.Amps,
        Source = rating.Source,
        Provenance = rating.Provenance,
    };

    private static OpeningEntry Point(TimeCurrentPoint point) => new()
    {
        ShareOfRating = point.ShareOfRating,
        FastestSeconds = point.FastestSeconds,
        SlowestSeconds = point.SlowestSeconds,
        Source = point.Source,
        Provenance = point.Provenance,
    };

    private static DeratingEntry Derating(DeratingPoint point) => new()
    {
        Celsius = point.Celsius,
        Share = point.Share,
        Source = point.Source,
        Provenance = point.Provenance,
    };

    private static SourcedFigure Figure(SourcedNumber number) =>
        new() { Value = number.Value, Source = number.Source, Provenance = number.Provenance };
}
