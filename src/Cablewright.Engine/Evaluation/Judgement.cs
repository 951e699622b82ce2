using Cablewright.Engine.Builds;
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

    private Judgement(BuildModel model, Decision decision, WorstCurrents currents, GuardMap guards)
    {
        build = model.Build;
        wiring = model.Circuit;
        shape = model.Topology;
        ampacities = model.Ampacities;
        this.decision = decision;
        this.currents = currents;
        this.guards = guards;
    }

    /// <summary>Every rule that does not hold.</summary>
    public static IReadOnlyList<Breach> Of(BuildModel model, Decision decision, WorstCurrents currents, GuardMap guards)
    {
        CompleteBuild build = model.Build;
        var judgement = new Judgement(model, decision, currents, guards);
        for (int amplifier = 0; amplifier < build.Draws.Count; amplifier++) judgement.JudgeAmplifier(amplifier);
        for (int run = 0; run < build.Runs.Count; run++) judgement.JudgeRun(run);
        return judgement.breaches;
    }

    private void Add(BreachKind kind, Severity severity, int index, double measured, double limit) =>
        breaches.Add(new Breach(kind, severity, index, false, measured, limit));

    private void Add(BreachKind kind, Severity severity, RunEnd end, double measured, double limit) =>
        breaches.Add(new Breach(kind, severity, end.Run, end.IsFar, measured, limit));

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
                Add(BreachKind.FuseInReturn, Severity.Caution, new RunEnd(run, !described.Near.MustBeFitted), 0, 0);
            return;
        }

        if (single > 0)
        {
            foreach (RunEnd end in RunEnd.Of(run)) JudgeGuards(end, single);
        }

        foreach (RunEnd end in RunEnd.Of(run)) JudgeFuse(end);
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
        double limit = common.Length > 0 ? Math.Min(supplies, common.Max()) : supplies, back = 1 / decision.Conductors[run].OhmsPerMetreAt20;
        if (Significant.Exceeds(limit, back)) Add(BreachKind.SharedReturnBelowSupply, Severity.Caution, run, back, limit);
    }

    private void JudgeHeat(int run, double ampacity)
    {
        if (Significant.Exceeds(currents.ThermalAmps[run], ampacity))
            Add(BreachKind.OverAmpacity, Severity.Fail, run, currents.ThermalAmps[run], ampacity);
    }

    /// <summary>Holds what can enter a run at an end against what it bears.</summary>
    private void JudgeGuards(RunEnd end, double single)
    {
        double entering = guards.EnteringAmps(end);
        if (double.IsInfinity(entering)) return;
        int count = decision.Conductors[end.Run].Count;
        if (!Significant.Exceeds(entering, guards.IsGuardedPerConductor(end) ? single * count : single)) return;
        FittedFuse? own = decision.FuseAt(end);
        BreachKind kind = !Significant.Exceeds(entering, single * count) ? BreachKind.ParallelUnguarded
            : own is null ? BreachKind.FuseMissingAtReduction
            : own.Decided is Decided.Chosen ? BreachKind.NoFuseFits
            : BreachKind.FuseAboveConductor;
        Add(kind, Severity.Fail, end, entering, kind is BreachKind.ParallelUnguarded ? single : single * count);
    }

    private void JudgeFuse(RunEnd end)
    {
        int run = end.Run;
        bool atBattery = shape.IsAtBattery(end);
        if (decision.FuseAt(end) is not { } fuse)
        {
            if (!atBattery) return;
            bool charging = IsAlternatorCable(run);
            Add(
                charging ? BreachKind.AlternatorCableUnguarded : BreachKind.FuseMissingAtBattery,
                charging ? Severity.Caution : Severity.Fail, end, 0, 0);
            return;
        }

        double carrying = fuse.CarryingAmps(decision.Conductors[run].Count);
        if (Significant.Exceeds(currents.ThermalAmps[run], carrying))
            Add(BreachKind.FuseBelowLoad, Severity.Fail, end, currents.ThermalAmps[run], carrying);
        else if (Significant.Exceeds(currents.ThermalAmps[run], carrying * fuse.HotShare))
            Add(BreachKind.FuseHotBelowLoad, Severity.Caution, end, currents.ThermalAmps[run], carrying * fuse.HotShare);
        if (!fuse.Family.IsMadeIn(fuse.RatingAmps))
            Add(BreachKind.FuseNotStandard, Severity.Caution, end, fuse.RatingAmps, 0);
        if (Significant.Exceeds(build.HighestSupplyVolts, fuse.VoltageRatingVolts))
            Add(BreachKind.FuseVoltageTooLow, Severity.Fail, end, fuse.VoltageRatingVolts, build.HighestSupplyVolts);
        JudgeDistance(end, fuse, atBattery);
        if (fuse.Decided is Decided.Chosen && !NoFuseFits(run))
            Add(BreachKind.FuseChosen, Severity.Caution, end, fuse.RatingAmps, 0);
    }

    /// <summary>Whether it was found already that no fuse fits a run; asking for one then would contradict that.</summary>
    private bool NoFuseFits(int run) => breaches.Exists(breach => breach.Kind is BreachKind.NoFuseFits && breach.Index == run);

    private void JudgeDistance(RunEnd end, FittedFuse fuse, bool atBattery)
    {
        if (fuse.Decided is Decided.Chosen) return;
        double most = build.Ruleset["fuse.max-distance"].Value, close = build.Ruleset["fuse.near-distance"].Value;
        if (Significant.Exceeds(fuse.DistanceMetres, most))
            Add(BreachKind.FuseTooFar, atBattery ? Severity.Fail : Severity.Caution, end, fuse.DistanceMetres, most);
        else if (atBattery && Significant.Exceeds(fuse.DistanceMetres, close))
            Add(BreachKind.FuseNotNear, Severity.Info, end, fuse.DistanceMetres, close);
    }
}
