using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// The most that a fuse may have been chosen for, in any choice that keeps a goal and stays within its ampacity.
/// </summary>
/// <remarks>
/// <para>Fuses are chosen for currents, and currents change with the fuses: until both stay, a choice is worked out with smaller
/// fuses than its last ones. Let I be the last currents, engine running, and λ a factor such that with λ I the same conductors
/// still leave a load of constant power its share: λ (U − θ λ D − λ Φ) ≥ V − D, U being the supply voltage of the case, θ what
/// the resistances grow by as the conductors warm, Φ the most that smaller fuses on the way lose more. λ I then lies above a
/// solution of that circuit, and the one that Newton's method finds, the one of the highest voltage, lies below λ I. The
/// inequality is linear in D, so it holds for every drop up to the goal where it holds at 0 and at the goal.</para>
/// <para>θ: heat leaves a warmer conductor no less than in proportion to its rise, so under λ times the current the rise grows by
/// at most s = λ²/(1 − (λ² − 1) a τ), a being the relative growth of the resistance with each kelvin and τ the rise before, at
/// most that to the insulation's rating and <see cref="MarginKelvin"/> above: the published table and the heat balance lie less
/// than that apart.</para>
/// <para>Φ: a fuse is at least of the rating for the current with nothing lost, and at most of that for the ceiling; the first
/// ceilings are taken with the whole of what a fuse loses when it carries what it was chosen for.</para>
/// </remarks>
internal sealed class CurrentUpperBounds
{
    private const double MarginKelvin = 30;
    private const double Step = 0.001;
    private const double Most = 2;
    private const int Rounds = 3;

    /// <summary>A fuse was chosen for at least this share of the current that it carried before it grew.</summary>
    private const double FuseMargin = 1.25;

    private readonly CompleteBuild build;
    private readonly FuseLadders ladders;
    private readonly Bridges paths;
    private readonly LoadLowerBounds loads;
    private readonly Goal goal;
    private readonly double hot;
    private readonly double[] least;
    private double[] most;
    private double running = double.PositiveInfinity;
    private double lowest = double.PositiveInfinity;

    public CurrentUpperBounds(SizingTask task, LoadLowerBounds loads, Goal goal, ChoiceRules rules)
    {
        BuildModel model = task.Model;
        build = model.Build;
        ladders = task.Evaluator.FuseLadders;
        paths = task.Paths;
        this.loads = loads;
        this.goal = goal;
        hot = build.Runs.Max(Warming);
        least = OnRuns(loads.Least, load => loads.AtLowest(load, 0));
        most = [.. build.Runs.Select(_ => double.PositiveInfinity)];
        if (rules.AcceptsHeat || model.Circuit.Cases.Count > 2
            || Enumerable.Range(0, goal.Volts.Length).Any(model.Circuit.FeedsAlone)) return;
        for (int round = 0; round < Rounds; round++) Tighten();
    }

    /// <summary>
    /// The most that an amplifier draws, engine running, while fuses are chosen; infinite where that is not known.
    /// </summary>
    public double Running(int load) => loads.MostRunning(load) * running;

    /// <summary>The most that an amplifier draws at the lowest supply voltage while fuses are chosen.</summary>
    public double AtLowest(int load) => loads.MostRunning(load) * lowest;

    private void Tighten()
    {
        double[] more =
            [.. build.Runs.Select((_, run) => MoreVolts(RunEnd.Near(run)) + MoreVolts(RunEnd.Far(run)))];
        double[] fuses = [.. paths.Of.Select(way => way.Where(branch => branch < more.Length).Sum(run => more[run]))];
        running = Factor(build.ChargingVolts, fuses);
        lowest = Factor(build.LowestSupplyVolts, fuses);
        most = OnRuns(Running, AtLowest);
    }

    /// <summary>
    /// The larger, for each run, of the full currents engine running and the lasting ones at the lowest voltage.
    /// </summary>
    private double[] OnRuns(Func<int, double> running, Func<int, double> lowest) =>
        [.. Enumerable.Range(0, build.Runs.Count).Select(run => Math.Max(
            paths.LoadsOn[run].Sum(running), paths.LoadsOn[run].Sum(load => loads.ThermalShare(load) * lowest(load))))];

    /// <summary>
    /// The most that a fuse which is left open loses before it has grown to its last rating, above what it loses then.
    /// </summary>
    private double MoreVolts(RunEnd end)
    {
        int run = end.Run;
        FuseSlot slot = build.SlotAt(end);
        if (build.Runs[run].Side is Side.Return || slot.RatingAmps is not null || slot.Refused) return 0;
        if (end.IsFar && !slot.MustBeFitted) return 0;
        FuseLadder ladder = ladders.At(end);
        FuseFamily[] families =
            [.. ladder.Between((least[run], 0), (most[run], double.PositiveInfinity))];
        double whole = families.Max(family => family.DropAtRatingVolts.Value * family.ContinuousUseFactor.Value);
        if (double.IsInfinity(most[run]) || (build.Runs[run].GivenCount ?? goal.MostParallel) > 1) return FuseMargin * whole;
        double before = families.Max(family => Ohms(ladder, family, least[run]) ?? 0);
        double after = families.Min(family => Ohms(ladder, family, most[run]) ?? family.Ohms(family.RatingsAmps.Values[^1]));
        return most[run] * Math.Max(0, before - after);
    }

    private static double? Ohms(FuseLadder ladder, FuseFamily family, double amps) =>
        ladder.SmallestCarrying(family, amps) is { } rating ? family.Ohms(rating) : null;

    private static double Warming(CompleteRun run)
    {
        double coefficient = MaterialProperties.All.Max(metal => metal.TemperatureCoefficientPerKelvin);
        double rise = Math.Max(0, run.InsulationCelsius + MarginKelvin - run.MeanAirCelsius);
        return coefficient * rise / (1 + coefficient * (run.MeanAirCelsius - 20));
    }

    private double Factor(double supply, double[] fuses)
    {
        for (double factor = 1; factor < Most; factor += Step)
        {
            double squared = factor * factor, rest = 1 - (squared - 1) * hot;
            if (rest <= 0) break;
            double growth = (1 + hot * squared / rest) / (1 + hot);
            if (fuses.Select((volts, load) => (volts, load))
                .All(way => Suffices(factor, growth, supply, goal.Volts[way.load], way.volts)))
                return factor;
        }

        return double.PositiveInfinity;
    }

    private bool Suffices(double factor, double growth, double supply, double drop, double fuses) =>
        factor * (supply - growth * factor * drop - factor * fuses) >= build.ChargingVolts - drop
        && factor * (supply - factor * fuses) >= build.ChargingVolts;
}
