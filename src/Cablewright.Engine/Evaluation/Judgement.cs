using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Evaluation;

/// <summary>Holds every rule against a decision and what the circuit does with it.</summary>
internal sealed class Judgement
{
    /// <summary>Looking whether a run serves those that share a return, in runs solved.</summary>
    private const double CostOfSharing = 0.3;

    private readonly CompleteBuild build;
    private readonly CircuitModel wiring;
    private readonly SupplyShape shape;
    private readonly Ampacities ampacities;
    private readonly Decision decision;
    private readonly WorstCurrents currents;
    private readonly GuardMap guards;
    private readonly List<Breach> breaches = [];

    private Judgement(
        CompleteBuild build,
        CircuitModel wiring,
        SupplyShape shape,
        Ampacities ampacities,
        Decision decision,
        WorstCurrents currents,
        GuardMap guards)
    {
        this.build = build;
        this.wiring = wiring;
        this.shape = shape;
        this.ampacities = ampacities;
        this.decision = decision;
        this.currents = currents;
        this.guards = guards;
    }

    public static IReadOnlyList<Breach> Of(
        CompleteBuild build,
        CircuitModel wiring,
        SupplyShape shape,
        Ampacities ampacities,
        Decision decision,
        WorstCurrents currents,
        GuardMap guards)
    {
        var judgement = new Judgement(build, wiring, shape, ampacities, decision, currents, guards);
        for (int amplifier = 0; amplifier < build.Draws.Count; amplifier++) judgement.JudgeAmplifier(amplifier);
        for (int run = 0; run < build.Runs.Count; run++) judgement.JudgeRun(run);
        return judgement.breaches;
    }

    private void Add(BreachKind kind, Severity severity, int index, double measured, double limit, bool far = false) =>
        breaches.Add(new Breach(kind, severity, index, far, measured, limit));

    private void JudgeAmplifier(int amplifier)
    {
        double drop = wiring.LostVolts(amplifier, currents);
        double hard = build.Drop.HardVolts * wiring.SourceShareOf(amplifier);
        double target = build.Drop.TargetVolts * wiring.SourceShareOf(amplifier);
        if (Significant.Exceeds(drop, hard)) Add(BreachKind.DropOverLimit, Severity.Fail, amplifier, drop, hard);
        else if (Significant.Exceeds(drop, target)) Add(BreachKind.DropOverTarget, Severity.Caution, amplifier, drop, target);

        if (wiring.FeedsAlone(amplifier) && !wiring.IsFedByCharger(amplifier))
            Add(BreachKind.SupplyNotCharged, Severity.Caution, amplifier, 0, 0);
        JudgeOnBoardFuse(amplifier);
        (double supply, double back) = SiemensMetresAt(amplifier);
        if (Significant.Exceeds(supply, back)) Add(BreachKind.ReturnBelowSupply, Severity.Caution, amplifier, back, supply);
    }

    private void JudgeOnBoardFuse(int amplifier)
    {
        AmplifierDraw draw = build.Draws[amplifier];
        if (draw.Full.Kind is LoadKind.ConstantCurrent) return;
        if (build.Stated.Amplifiers[amplifier].OnBoardFuseAmps is not { } fuse) return;
        double atRating = CircuitSolver.Amps(draw.Full, draw.RatingVolts);
        if (Significant.Exceeds(atRating, fuse))
            Add(BreachKind.RatingAboveOnBoardFuse, Severity.Caution, amplifier, atRating, fuse);
    }

    /// <summary>
    /// How well the runs at an amplifier conduct, in metres to the ohm at 20 °C: its strongest supply run, since another may only
    /// pass the supply on, and its returns together.
    /// </summary>
    private (double Supply, double Return) SiemensMetresAt(int amplifier)
    {
        double supply = 0, back = 0;
        foreach (int run in wiring.RunsAt(amplifier))
        {
            double metresPerOhm = 1 / decision.Conductors[run].OhmsPerMetreAt20;
            if (build.Runs[run].Side is Side.Supply) supply = Math.Max(supply, metresPerOhm);
            else back += metresPerOhm;
        }

        return (supply, back);
    }

    private void JudgeRun(int run)
    {
        CompleteRun described = build.Runs[run];
        double single = ampacities.Of(run, decision.Conductors[run].Conductor).LimitAmps;
        if (single <= 0)
            Add(BreachKind.SurroundingsTooHot, Severity.Fail, run, described.AirCelsius, described.InsulationCelsius);
        else JudgeHeat(run, single * decision.Conductors[run].Count);
        foreach (TerminalLimit terminal in described.Terminals)
        {
            ConductorSize size = decision.Conductors[run].Conductor.Size;
            if (!size.FitsWhere(terminal.Largest))
            {
                Add(BreachKind.TerminalTooSmall, Severity.Fail, run, size.NominalAreaMm2, terminal.Largest.NominalAreaMm2);
                break;
            }
        }

        JudgeIsolator(run);
        if (described.Side is Side.Return)
        {
            JudgeSharedReturn(run);
            if (described.Near.MustBeFitted || described.Far.MustBeFitted)
                Add(BreachKind.FuseInReturn, Severity.Caution, run, 0, 0, !described.Near.MustBeFitted);
            return;
        }

        if (single > 0)
        {
            JudgeGuards(run, single, far: false);
            JudgeGuards(run, single, far: true);
        }

        JudgeFuse(run, decision.Near[run], far: false);
        JudgeFuse(run, decision.Far[run], far: true);
        JudgeAlternatorCable(run);
    }

    /// <summary>A charger limits itself; relay and diode carry what comes.</summary>
    private void JudgeIsolator(int run)
    {
        if (build.Runs[run].Isolator is not { } isolator || isolator.Kind is IsolatorKind.DcDcCharger) return;
        if (isolator.RatedAmps is not { } rated)
            Add(BreachKind.IsolatorUnrated, Severity.Caution, run, currents.ThermalAmps[run], 0);
        else if (Significant.Exceeds(currents.ThermalAmps[run], rated))
            Add(BreachKind.IsolatorOverRated, Severity.Fail, run, currents.ThermalAmps[run], rated);
    }

    private void JudgeAlternatorCable(int run)
    {
        if (!IsAlternatorCable(run)) return;
        double limit = build.Ruleset["alternator.cable-drop"].Value * build.NominalFactor;
        double drop = currents.PeakAmps[run] * currents.Ohms[run];
        if (Significant.Exceeds(drop, limit)) Add(BreachKind.AlternatorDropLarge, Severity.Caution, run, drop, limit);
    }

    private bool IsAlternatorCable(int run) =>
        build.AlternatorPlace is { } place && (build.Runs[run].From == place || build.Runs[run].To == place);

    /// <summary>
    /// Where several amplifiers have no other way back, the return that they share stands against the strongest supply run that
    /// they share, or, where each has its own, against these together.
    /// </summary>
    private void JudgeSharedReturn(int run)
    {
        IReadOnlyList<int> sharing = wiring.SharedReturns.AmplifiersOver(run);
        if (sharing.Count < 2) return;
        build.Meter.Count(CostOfSharing * build.Runs.Count);
        double supplies = sharing.Sum(amplifier => SiemensMetresAt(amplifier).Supply);
        double[] common = [.. Enumerable.Range(0, build.Runs.Count)
            .Where(other => !sharing.Except(wiring.SharedSupplies.AmplifiersOver(other)).Any())
            .Select(other => 1 / decision.Conductors[other].OhmsPerMetreAt20)];
        double limit = common.Length > 0 ? Math.Min(supplies, common.Max()) : supplies;
        double back = 1 / decision.Conductors[run].OhmsPerMetreAt20;
        if (Significant.Exceeds(limit, back)) Add(BreachKind.SharedReturnBelowSupply, Severity.Caution, run, back, limit);
    }

    private void JudgeHeat(int run, double ampacity)
    {
        if (Significant.Exceeds(currents.ThermalAmps[run], ampacity))
            Add(BreachKind.OverAmpacity, Severity.Fail, run, currents.ThermalAmps[run], ampacity);
    }

    /// <summary>Holds what can enter a run at an end against what it bears.</summary>
    private void JudgeGuards(int run, double single, bool far)
    {
        double entering = guards.EnteringAmps(run, far);
        if (double.IsInfinity(entering)) return;
        int count = decision.Conductors[run].Count;
        if (!Significant.Exceeds(entering, guards.IsGuardedPerConductor(run, far) ? single * count : single)) return;
        FittedFuse? own = far ? decision.Far[run] : decision.Near[run];
        BreachKind kind = !Significant.Exceeds(entering, single * count) ? BreachKind.ParallelUnguarded
            : own is null ? BreachKind.FuseMissingAtReduction
            : own.Decided is Decided.Chosen ? BreachKind.NoFuseFits
            : BreachKind.FuseAboveConductor;
        Add(kind, Severity.Fail, run, entering, kind is BreachKind.ParallelUnguarded ? single : single * count, far);
    }

    private void JudgeFuse(int run, FittedFuse? fuse, bool far)
    {
        bool atBattery = shape.IsAtBattery(run, far);
        if (fuse is null)
        {
            if (!atBattery) return;
            bool charging = IsAlternatorCable(run);
            Add(
                charging ? BreachKind.AlternatorCableUnguarded : BreachKind.FuseMissingAtBattery,
                charging ? Severity.Caution : Severity.Fail, run, 0, 0, far);
            return;
        }

        double carrying = fuse.CarryingAmps(decision.Conductors[run].Count);
        if (Significant.Exceeds(currents.ThermalAmps[run], carrying))
            Add(BreachKind.FuseBelowLoad, Severity.Fail, run, currents.ThermalAmps[run], carrying, far);
        else if (Significant.Exceeds(currents.ThermalAmps[run], carrying * fuse.HotShare))
            Add(BreachKind.FuseHotBelowLoad, Severity.Caution, run, currents.ThermalAmps[run], carrying * fuse.HotShare, far);
        if (!fuse.Family.IsMadeIn(fuse.RatingAmps))
            Add(BreachKind.FuseNotStandard, Severity.Caution, run, fuse.RatingAmps, 0, far);
        if (Significant.Exceeds(build.HighestSupplyVolts, fuse.VoltageRatingVolts))
            Add(BreachKind.FuseVoltageTooLow, Severity.Fail, run, fuse.VoltageRatingVolts, build.HighestSupplyVolts, far);
        JudgeDistance(run, fuse, atBattery, far);
        if (fuse.Decided is Decided.Chosen && !NoFuseFits(run))
            Add(BreachKind.FuseChosen, Severity.Caution, run, fuse.RatingAmps, 0, far);
    }

    /// <summary>Whether it was found already that no fuse fits a run; asking for one then would contradict that.</summary>
    private bool NoFuseFits(int run) => breaches.Exists(breach => breach.Kind is BreachKind.NoFuseFits && breach.Index == run);

    private void JudgeDistance(int run, FittedFuse fuse, bool atBattery, bool far)
    {
        if (fuse.Decided is Decided.Chosen) return;
        double most = build.Ruleset["fuse.max-distance"].Value, close = build.Ruleset["fuse.near-distance"].Value;
        if (Significant.Exceeds(fuse.DistanceMetres, most))
            Add(BreachKind.FuseTooFar, atBattery ? Severity.Fail : Severity.Caution, run, fuse.DistanceMetres, most, far);
        else if (atBattery && Significant.Exceeds(fuse.DistanceMetres, close))
            Add(BreachKind.FuseNotNear, Severity.Info, run, fuse.DistanceMetres, close, far);
    }
}
