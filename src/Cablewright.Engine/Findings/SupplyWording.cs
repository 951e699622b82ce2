using Cablewright.Engine.Builds;
using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Supply;

namespace Cablewright.Engine.Findings;

/// <summary>Words for what is drawn and what can be given.</summary>
internal sealed class SupplyWording(CompleteBuild build, Evaluator evaluator, Evaluation evaluation)
{
    public Wording OnBoardFuse(Breach breach)
    {
        Amplifier amplifier = build.Stated.Amplifiers[breach.Index];
        double ratingVolts = build.Draws[breach.Index].RatingVolts;
        double efficiency = build.Draws[breach.Index].Efficiency ?? 1;
        string possible = build.Draws[breach.Index].Efficiency is null ? "" : $" Those fuses stand for about {Phrase.Watts(breach.Limit * ratingVolts * efficiency)} of lasting output.";
        return new Wording(
            $"/amplifiers/{breach.Index}/fuse",
            $"Amplifier \"{amplifier.Id}\" would draw {Phrase.Amps(breach.Measured)} at its rated output, and its own fuses "
            + $"are {Phrase.Amps(breach.Limit)}.{possible}",
            "check the rated output, or which channels and impedance it stands for",
            $"{Phrase.Watts(CircuitSolver.Amps(build.Draws[breach.Index].Full, ratingVolts) * ratingVolts)} / "
            + $"{Phrase.Volts(ratingVolts)} = {Phrase.Amps(breach.Measured)}",
            "A");
    }

    public Wording NotCharged(Breach breach) => new(
        $"/amplifiers/{breach.Index}",
        $"Amplifier \"{build.Stated.Amplifiers[breach.Index].Id}\" hangs on a battery that no run ties to the "
        + $"alternator's: it is judged at {Phrase.Volts(build.LowestSupplyVolts)}, and the battery empties.",
        "a fused run between the two batteries",
        "no supply run leads from the battery at the alternator to this amplifier");

    public Wording AverageAboveAlternator(Breach breach) => new(
        "/vehicle/alternator",
        $"On its programme the system draws {Phrase.Amps(breach.Measured)} on average, and the hot alternator has "
        + $"{Phrase.Amps(breach.Limit)} left: the battery gives the rest and empties while driving.",
        $"about {Phrase.Amps((breach.Measured + build.Supply.BaseLoadAmps) / HotShare)} of rated alternator current, or "
        + "less power",
        $"left = {Phrase.Amps(build.Supply.HotAmps!.Value)} hot - {Phrase.Amps(build.Supply.BaseLoadAmps)} base load = "
        + $"{Phrase.Amps(breach.Limit)}",
        "A");

    public Wording PeakAboveAlternator(Breach breach) => new(
        "/vehicle/alternator",
        $"At full output the system draws {Phrase.Amps(breach.Measured)}, and the hot alternator has "
        + $"{Phrase.Amps(breach.Limit)} left; the battery gives the rest as long as it lasts. On average it draws "
        + $"{Phrase.Amps(AverageAmps)}.",
        "none needed for music; for test tones keep the volume down",
        $"left = {Phrase.Amps(build.Supply.HotAmps!.Value)} hot - {Phrase.Amps(build.Supply.BaseLoadAmps)} base load = "
        + $"{Phrase.Amps(breach.Limit)}",
        "A");

    public Wording AverageAboveIdle(Breach breach) => new(
        "/vehicle/alternator/idleCurrent",
        $"At idle the system draws {Phrase.Amps(breach.Measured)} on average, and the alternator has "
        + $"{Phrase.Amps(breach.Limit)} left: the battery empties while the vehicle stands with the engine idling.",
        "keep the volume down at idle, or an alternator with more output at low speed",
        $"left = {Phrase.Amps(build.Supply.IdleAmps!.Value)} at idle - {Phrase.Amps(build.Supply.BaseLoadAmps)} base "
        + $"load, not below 0 = {Phrase.Amps(breach.Limit)}",
        "A");

    public Wording Budget() => new(
        "/sizing",
        "The work budget ended before the choice was finished: a smaller one may exist, and a rule that does not hold "
        + "might with other conductors.",
        "state more of the conductors, or fewer sizes to choose from",
        $"work budget = {Phrase.Number(build.Ruleset["sizing.work-budget"].Value)} runs solved");

    private double AverageAmps => SupplyBalance.Of(build, evaluator.Wiring, evaluation.Currents).AverageAmps;

    private double HotShare => build.Supply.HotAmps!.Value / build.Stated.Vehicle.Alternator!.RatedAmps!.Value;
}
