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
        Params values = new() { ["amplifier"] = amplifier.Id, ["fuseAmps"] = violation.Limit };
        return FusedOutput(violation) is { } watts && amplifier.RatedOutputWatts is { } label
            ? build.Speech.Text(
                "summary.true-output", values.And(new Params { ["fusedWatts"] = watts, ["labelWatts"] = label }))
            : build.Speech.Text("summary.true-output.unknown", values);
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
        });

    public Wording AverageAboveAlternator(Violation violation) => new(
        Charger,
        Average(violation, Vocabulary.SupplyCaseName.AtSpeed),
        Left(build.Supply.HotAmps!.Value, build.Supply.IsConverter ? "" : " hot", violation.Limit),
        "A")
    {
        Variant = Kind + ToItsLimit(Vocabulary.SupplyCaseName.AtSpeed),
        Remedy = cures.ForAverage(build.Supply.HotAmps!.Value),
    };

    public Wording PeakAboveAlternator(Violation violation) => new(
        Charger,
        new Params
        {
            ["peakAmps"] = violation.Measured,
            ["leftAmps"] = violation.Limit,
            ["averageAmps"] = report.Balance.AverageAmps,
        },
        Left(build.Supply.HotAmps!.Value, " hot", violation.Limit),
        "A")
    {
        Variant = Kind,
    };

    public Wording PeakAboveConverter(Violation violation) => new(
        Charger,
        new Params { ["peakAmps"] = violation.Measured, ["leftAmps"] = violation.Limit },
        Left(build.Supply.HotAmps!.Value, "", violation.Limit),
        "A")
    {
        Remedy = build.Speech.Text(
            "remedy.supply.peak-above-converter", new Params { ["outputShare"] = violation.Limit / violation.Measured }),
    };

    public Wording AverageAboveIdle(Violation violation) => new(
        "/vehicle/alternator/idleCurrent",
        Average(violation, Vocabulary.SupplyCaseName.Idle)
            .And(cures.CoveredFromRpm is { } rpm ? new Params { ["coveredFromRpm"] = rpm } : []),
        Left(build.Supply.IdleAmps!.Value, " at idle", violation.Limit),
        "A")
    {
        Variant = ToItsLimit(Vocabulary.SupplyCaseName.Idle) + (cures.CoveredFromRpm is null ? "" : ".covered"),
        Remedy = cures.ForIdle(),
    };

    public Wording NotHeld() => new("/vehicle", [], Full("workings.supply.full-output-not-held"))
    {
        Remedy = cures.ForPeak(),
    };

    public Wording VoltageLow(Violation violation) => new(
        "/vehicle",
        new Params { ["volts"] = violation.Measured, ["limitVolts"] = violation.Limit },
        Full("workings.supply.voltage-low-at-full-output"),
        "V")
    {
        Variant = Kind,
        Remedy = cures.ForPeak(),
    };

    public static Wording BeyondStock() => new("/sizing", []);

    public static Wording Budget() => new(
        "/sizing",
        [],
        $"work budget = {Phrase.Number(WorkBudgets.Sizing)} runs solved");

    private string Charger => build.Supply.IsConverter ? "/vehicle/converter" : "/vehicle/alternator";

    private string Left(double given, string when, double left) =>
        $"left = {Phrase.Amps(given)}{when} - {Phrase.Amps(build.Supply.BaseLoadAmps)} base load, not below 0 = "
        + $"{Phrase.Amps(left)}";

    /// <summary>What is drawn at full output, and what is left for it, in a sentence.</summary>
    private string Full(string key) => build.Speech.Text(key, new Params
    {
        ["peakAmps"] = report.Balance.PeakAmps,
        ["leftAmps"] = report.Balance.Available(build.Supply.HotAmps!.Value),
    });

    private string Kind => build.Supply.IsConverter ? ".converter" : "";

    private Params Average(Violation violation, Vocabulary.SupplyCaseName name)
    {
        Params values = new() { ["averageAmps"] = violation.Measured, ["leftAmps"] = violation.Limit };
        if (report[name]?.MinutesToLimit is { } minutes) values["minutes"] = minutes;
        return values;
    }

    private string ToItsLimit(Vocabulary.SupplyCaseName name) => report[name]?.MinutesToLimit is null ? "" : ".to-its-limit";
}
