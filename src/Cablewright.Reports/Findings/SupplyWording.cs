using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Supply;

namespace Cablewright.Reports.Findings;

/// <summary>Words for what is drawn and what the alternator or the converter can give.</summary>
internal sealed class SupplyWording(CompleteBuild build, SupplyReport report)
{
    private readonly SupplyCures cures = new(build, report);

    public Wording OnBoardFuse(Violation violation)
    {
        Amplifier amplifier = build.Stated.Amplifiers[violation.Index];
        double ratingVolts = build.Draws[violation.Index].RatingVolts;
        string possible = FusedOutput(violation) is { } watts
            ? $" Those fuses stand for about {Phrase.Watts(watts)} of continuous output."
            : "";
        return new Wording(
            $"/amplifiers/{violation.Index}/fuse",
            $"Amplifier \"{amplifier.Id}\" would draw {Phrase.Amps(violation.Measured)} at its rated output, and its own fuses "
            + $"are {Phrase.Amps(violation.Limit)}.{possible}",
            "check the rated output, or which channels and impedance it stands for",
            $"{Phrase.Watts(CircuitSolver.Amps(build.Draws[violation.Index].Full, ratingVolts) * ratingVolts)} / "
            + $"{Phrase.Volts(ratingVolts)} = {Phrase.Amps(violation.Measured)}",
            "A");
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
        $"Amplifier \"{build.Stated.Amplifiers[violation.Index].Id}\" hangs on a battery that no run ties to the "
        + $"alternator's: it is judged at {Phrase.Volts(build.LowestSupplyVolts)}, and the battery empties.",
        "a fused run between the two batteries",
        "no supply run leads from the battery at the alternator to this amplifier");

    public Wording AverageAboveAlternator(Violation violation) => new(
        Charger,
        $"On its programme the system draws {Phrase.Amps(violation.Measured)} on average, and the {build.Supply.Charger} has "
        + $"{Phrase.Amps(violation.Limit)} left: the battery gives the rest and empties while driving"
        + $"{Continuous(Vocabulary.SupplyCaseName.AtSpeed)}.",
        cures.ForAverage(build.Supply.HotAmps!.Value),
        Left(build.Supply.HotAmps!.Value, build.Supply.IsConverter ? "" : " hot", violation.Limit),
        "A");

    public Wording PeakAboveAlternator(Violation violation) => new(
        Charger,
        $"At full output the system draws {Phrase.Amps(violation.Measured)}, and the {build.Supply.Charger} has "
        + $"{Phrase.Amps(violation.Limit)} left; the battery gives the rest as long as it lasts. On average it draws "
        + $"{Phrase.Amps(report.Balance.AverageAmps)}.",
        "none needed for music; for test tones keep the volume down",
        Left(build.Supply.HotAmps!.Value, " hot", violation.Limit),
        "A");

    public Wording PeakAboveConverter(Violation violation) => new(
        Charger,
        $"At full output the system draws {Phrase.Amps(violation.Measured)}, and the converter has "
        + $"{Phrase.Amps(violation.Limit)} "
        + "left beside the vehicle's own load. A converter limits its output and may shut down, and the vehicle with it.",
        $"at most {Phrase.Percent(violation.Limit / violation.Measured)} of the output, or a battery of its own behind a "
        + "charger that "
        + "takes no more than is left; ask the vehicle's maker what may be drawn",
        Left(build.Supply.HotAmps!.Value, "", violation.Limit),
        "A");

    public Wording AverageAboveIdle(Violation violation) => new(
        "/vehicle/alternator/idleCurrent",
        $"At idle the system draws {Phrase.Amps(violation.Measured)} on average, and the alternator has "
        + $"{Phrase.Amps(violation.Limit)} left: the battery empties while the vehicle stands with the engine idling"
        + $"{Continuous(Vocabulary.SupplyCaseName.Idle)}.{cures.Covered()}",
        "keep the volume down at idle, or " + cures.ForIdle(),
        Left(build.Supply.IdleAmps!.Value, " at idle", violation.Limit),
        "A");

    public Wording NotHeld() => new(
        "/vehicle",
        "At full output the alternator reaches its limit, and the batteries' own resistance does not let them give the rest: the "
        + "voltage falls until the amplifiers cut out.",
        cures.ForPeak(),
        $"full draw {Phrase.Amps(report.Balance.PeakAmps)}, left "
        + $"{Phrase.Amps(report.Balance.Available(build.Supply.HotAmps!.Value))}; the node equations with the batteries at their "
        + "rest voltage behind their resistance have no solution");

    public Wording VoltageLow(Violation violation) => new(
        "/vehicle",
        $"At full output the batteries have to give what the {build.Supply.Charger} cannot, and the lowest voltage at an "
        + $"amplifier is {Phrase.Volts(violation.Measured)}; below {Phrase.Volts(violation.Limit)} equipment may cut out.",
        cures.ForPeak(),
        $"full draw {Phrase.Amps(report.Balance.PeakAmps)}, left "
        + $"{Phrase.Amps(report.Balance.Available(build.Supply.HotAmps!.Value))}; batteries at their rest voltage behind their "
        + "resistance",
        "V");

    public static Wording BeyondStock() => new(
        "/sizing",
        "No cable that shops usually keep does this, nor two of the largest in parallel: what is chosen has to be ordered.",
        "a shorter way, a battery near the amplifiers, or less power",
        "tried first: one conductor of the sizes kept, then two of the largest, then every size made");

    public static Wording Budget() => new(
        "/sizing",
        "The work budget ended before the choice was finished: a smaller one may exist, and a rule that does not hold "
        + "might with other conductors.",
        "state more of the conductors, or fewer sizes to choose from",
        $"work budget = {Phrase.Number(WorkBudgets.Sizing)} runs solved");

    private string Charger => build.Supply.IsConverter ? "/vehicle/converter" : "/vehicle/alternator";

    private string Left(double given, string when, double left) =>
        $"left = {Phrase.Amps(given)}{when} - {Phrase.Amps(build.Supply.BaseLoadAmps)} base load, not below 0 = "
        + $"{Phrase.Amps(left)}";

    private string Continuous(Vocabulary.SupplyCaseName name) => report[name]?.MinutesToLimit is { } minutes
        ? $", in about {Phrase.Minutes(minutes)} of such music to its limit"
        : "";
}
