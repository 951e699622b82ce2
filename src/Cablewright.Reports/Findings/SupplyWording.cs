using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Supply;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what is drawn and what the alternator or the converter can give.</summary>
internal sealed class SupplyWording(CompleteBuild build, SupplyReport report)
{
    private readonly SupplyCures cures = new(build, report);

    public Wording OnBoardFuse(Violation violation)
    {
        Amplifier amplifier = build.Stated.Amplifiers[violation.Index];
        double ratingVolts = build.Draws[violation.Index].RatingVolts;
        double? fused = FusedOutput(violation);
        return new Wording(
            $"/amplifiers/{violation.Index}/fuse",
            new Params
            {
                ["amplifier"] = amplifier.Id,
                ["drawAmps"] = violation.Measured,
                ["fuseAmps"] = violation.Limit,
            }.And(fused is { } watts ? new Params { ["fusedWatts"] = watts } : []),
            "check the rated output, or which channels and impedance it stands for",
            $"{Phrase.Watts(CircuitSolver.Amps(build.Draws[violation.Index].Full, ratingVolts) * ratingVolts)} / "
            + $"{Phrase.Volts(ratingVolts)} = {Phrase.Amps(violation.Measured)}",
            "A")
        {
            Variant = fused is null ? "" : ".output",
        };
    }

    /// <summary>What an amplifier is by its own fuses.</summary>
    public string TrueOutput(Violation violation)
    {
        Amplifier amplifier = build.Stated.Amplifiers[violation.Index];
        string fused = $"Amplifier \"{amplifier.Id}\" has fuses of {Phrase.Amps(violation.Limit)}";
        return FusedOutput(violation) is { } watts && amplifier.RatedOutputWatts is { } label
            ? $"{fused}: it is one of about {Phrase.Watts(watts)}, not of {Phrase.Watts(label)}."
            : $"{fused}, so it draws no more.";
    }

    private double? FusedOutput(Violation violation) => build.Draws[violation.Index] is { Efficiency: { } efficiency } draw
        ? violation.Limit * draw.RatingVolts * efficiency
        : null;

    public Wording NotCharged(Violation violation) => new(
        $"/amplifiers/{violation.Index}",
        new Params
        {
            ["amplifier"] = build.Stated.Amplifiers[violation.Index].Id,
            ["judgedVolts"] = build.LowestSupplyVolts,
        },
        "a fused run between the two batteries",
        "no supply run leads from the battery at the alternator to this amplifier");

    public Wording AverageAboveAlternator(Violation violation) => new(
        Charger,
        Average(violation, Vocabulary.SupplyCaseName.AtSpeed),
        cures.ForAverage(build.Supply.HotAmps!.Value),
        Left(build.Supply.HotAmps!.Value, build.Supply.IsConverter ? "" : " hot", violation.Limit),
        "A")
    {
        Variant = Kind + ToItsLimit(Vocabulary.SupplyCaseName.AtSpeed),
    };

    public Wording PeakAboveAlternator(Violation violation) => new(
        Charger,
        new Params
        {
            ["peakAmps"] = violation.Measured,
            ["leftAmps"] = violation.Limit,
            ["averageAmps"] = report.Balance.AverageAmps,
        },
        "none needed for music; for test tones keep the volume down",
        Left(build.Supply.HotAmps!.Value, " hot", violation.Limit),
        "A")
    {
        Variant = Kind,
    };

    public Wording PeakAboveConverter(Violation violation) => new(
        Charger,
        new Params { ["peakAmps"] = violation.Measured, ["leftAmps"] = violation.Limit },
        $"at most {Phrase.Percent(violation.Limit / violation.Measured)} of the output, or a battery of its own behind a "
        + "charger that "
        + "takes no more than is left; ask the vehicle's maker what may be drawn",
        Left(build.Supply.HotAmps!.Value, "", violation.Limit),
        "A");

    public Wording AverageAboveIdle(Violation violation) => new(
        "/vehicle/alternator/idleCurrent",
        Average(violation, Vocabulary.SupplyCaseName.Idle)
            .And(cures.CoveredFromRpm is { } rpm ? new Params { ["coveredFromRpm"] = rpm } : []),
        "keep the volume down at idle, or " + cures.ForIdle(),
        Left(build.Supply.IdleAmps!.Value, " at idle", violation.Limit),
        "A")
    {
        Variant = ToItsLimit(Vocabulary.SupplyCaseName.Idle) + (cures.CoveredFromRpm is null ? "" : ".covered"),
    };

    public Wording NotHeld() => new(
        "/vehicle",
        [],
        cures.ForPeak(),
        $"full draw {Phrase.Amps(report.Balance.PeakAmps)}, left "
        + $"{Phrase.Amps(report.Balance.Available(build.Supply.HotAmps!.Value))}; the node equations with the batteries at their "
        + "rest voltage behind their resistance have no solution");

    public Wording VoltageLow(Violation violation) => new(
        "/vehicle",
        new Params { ["volts"] = violation.Measured, ["limitVolts"] = violation.Limit },
        cures.ForPeak(),
        $"full draw {Phrase.Amps(report.Balance.PeakAmps)}, left "
        + $"{Phrase.Amps(report.Balance.Available(build.Supply.HotAmps!.Value))}; batteries at their rest voltage behind their "
        + "resistance",
        "V")
    {
        Variant = Kind,
    };

    public static Wording BeyondStock() => new(
        "/sizing",
        [],
        "a shorter way, a battery near the amplifiers, or less power",
        "tried first: one conductor of the sizes kept, then two of the largest, then every size made");

    public static Wording Budget() => new(
        "/sizing",
        [],
        "state more of the conductors, or fewer sizes to choose from",
        $"work budget = {Phrase.Number(WorkBudgets.Sizing)} runs solved");

    private string Charger => build.Supply.IsConverter ? "/vehicle/converter" : "/vehicle/alternator";

    private string Left(double given, string when, double left) =>
        $"left = {Phrase.Amps(given)}{when} - {Phrase.Amps(build.Supply.BaseLoadAmps)} base load, not below 0 = "
        + $"{Phrase.Amps(left)}";

    private string Kind => build.Supply.IsConverter ? ".converter" : "";

    private Params Average(Violation violation, Vocabulary.SupplyCaseName name)
    {
        Params values = new() { ["averageAmps"] = violation.Measured, ["leftAmps"] = violation.Limit };
        if (report[name]?.MinutesToLimit is { } minutes) values["minutes"] = minutes;
        return values;
    }

    private string ToItsLimit(Vocabulary.SupplyCaseName name) => report[name]?.MinutesToLimit is null ? "" : ".to-its-limit";
}
