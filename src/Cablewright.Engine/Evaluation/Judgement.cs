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

/// <summary>Holds every rule against a design and what the circuit does with it.</summary>
internal sealed class Judgement
{
    /// <summary>Looking whether a run serves those that share a return, in runs solved.</summary>
    private const double CostOfSharing = 0.3;

    private readonly CompleteBuild build;
    private readonly CircuitModel circuit;
    private readonly SupplyTopology topology;
    private readonly Ampacities ampacities;
    private readonly Design design;
    private readonly OperatingEnvelope envelope;
    private readonly ProtectionMap protection;
    private readonly List<Violation> violations = [];

    private Judgement(BuildModel model, Design design, OperatingEnvelope envelope, ProtectionMap protection)
    {
        build = model.Build;
        circuit = model.Circuit;
        topology = model.Topology;
        ampacities = model.Ampacities;
        this.design = design;
        this.envelope = envelope;
        this.protection = protection;
    }

    /// <summary>Every rule that does not hold.</summary>
    public static IReadOnlyList<Violation> Of(
        BuildModel model, Design design, OperatingEnvelope envelope, ProtectionMap protection)
    {
        CompleteBuild build = model.Build;
        var judgement = new Judgement(model, design, envelope, protection);
        for (int amplifier = 0; amplifier < build.Draws.Count; amplifier++) judgement.JudgeAmplifier(amplifier);
        for (int run = 0; run < build.Runs.Count; run++) judgement.JudgeRun(run);
        return judgement.violations;
    }

    private void Add(ViolationKind kind, Severity severity, int index, double measured, double limit) =>
        violations.Add(new Violation(kind, severity, index, false, measured, limit));

    private void Add(ViolationKind kind, Severity severity, RunEnd end, double measured, double limit) =>
        violations.Add(new Violation(kind, severity, end.Run, end.IsFar, measured, limit));

    private void JudgeAmplifier(int amplifier)
    {
        double drop = circuit.LostVolts(amplifier, envelope);
        double hard = build.Drop.HardVolts * circuit.SourceShareOf(amplifier);
        double target = build.Drop.TargetVolts * circuit.SourceShareOf(amplifier);
        if (Significant.Exceeds(drop, hard)) Add(ViolationKind.DropOverLimit, Severity.Fail, amplifier, drop, hard);
        else if (Significant.Exceeds(drop, target)) Add(ViolationKind.DropOverTarget, Severity.Caution, amplifier, drop, target);

        if (circuit.FeedsAlone(amplifier) && !circuit.IsFedByCharger(amplifier))
            Add(ViolationKind.SupplyNotCharged, Severity.Caution, amplifier, 0, 0);
        JudgeOnBoardFuse(amplifier);
        (double supply, double back) = SiemensMetresAt(amplifier);
        if (Significant.Exceeds(supply, back)) Add(ViolationKind.ReturnBelowSupply, Severity.Caution, amplifier, back, supply);
    }

    private void JudgeOnBoardFuse(int amplifier)
    {
        AmplifierDraw draw = build.Draws[amplifier];
        if (draw.Full.Kind is LoadKind.ConstantCurrent) return;
        if (build.Stated.Amplifiers[amplifier].OnBoardFuseAmps is not { } fuse) return;
        double atRating = CircuitSolver.Amps(draw.Full, draw.RatingVolts);
        if (Significant.Exceeds(atRating, fuse))
            Add(ViolationKind.RatingAboveOnBoardFuse, Severity.Caution, amplifier, atRating, fuse);
    }

    /// <summary>
    /// How well the runs at an amplifier conduct, in metres to the ohm at 20 °C: its strongest supply run, since another may only
    /// pass the supply on, and its returns together.
    /// </summary>
    private (double Supply, double Return) SiemensMetresAt(int amplifier)
    {
        double supply = 0, back = 0;
        foreach (int run in circuit.RunsAt(amplifier))
        {
            double metresPerOhm = 1 / design.Conductors[run].OhmsPerMetreAt20;
            if (build.Runs[run].Side is Side.Supply) supply = Math.Max(supply, metresPerOhm);
            else back += metresPerOhm;
        }

        return (supply, back);
    }

    private void JudgeRun(int run)
    {
        CompleteRun described = build.Runs[run];
        double single = ampacities.Of(run, design.Conductors[run].Conductor).LimitAmps;
        if (single <= 0)
            Add(ViolationKind.SurroundingsTooHot, Severity.Fail, run, described.AirCelsius, described.InsulationCelsius);
        else JudgeHeat(run, single * design.Conductors[run].Count);
        foreach (TerminalLimit terminal in described.Terminals)
        {
            ConductorSize size = design.Conductors[run].Conductor.Size;
            if (!size.FitsWhere(terminal.Largest))
            {
                Add(ViolationKind.TerminalTooSmall, Severity.Fail, run, size.NominalAreaMm2, terminal.Largest.NominalAreaMm2);
                break;
            }
        }

        JudgeIsolator(run);
        if (described.Side is Side.Return)
        {
            JudgeSharedReturn(run);
            if (described.Near.MustBeFitted || described.Far.MustBeFitted)
                Add(ViolationKind.FuseInReturn, Severity.Caution, new RunEnd(run, !described.Near.MustBeFitted), 0, 0);
            return;
        }

        if (single > 0)
        {
            foreach (RunEnd end in RunEnd.Of(run)) JudgeProtection(end, single);
        }

        foreach (RunEnd end in RunEnd.Of(run)) JudgeFuse(end);
        JudgeAlternatorCable(run);
    }

    /// <summary>A charger limits itself; relay and diode carry what comes.</summary>
    private void JudgeIsolator(int run)
    {
        if (build.Runs[run].Isolator is not { } isolator || isolator.Kind is IsolatorKind.DcDcCharger) return;
        if (isolator.RatedAmps is not { } rated)
            Add(ViolationKind.IsolatorUnrated, Severity.Caution, run, envelope.ThermalAmps[run], 0);
        else if (Significant.Exceeds(envelope.ThermalAmps[run], rated))
            Add(ViolationKind.IsolatorOverRated, Severity.Fail, run, envelope.ThermalAmps[run], rated);
    }

    private void JudgeAlternatorCable(int run)
    {
        if (!IsAlternatorCable(run)) return;
        double limit = build.Ruleset["alternator.cable-drop"].Value * build.NominalFactor;
        double drop = envelope.PeakAmps[run] * envelope.Ohms[run];
        if (Significant.Exceeds(drop, limit)) Add(ViolationKind.AlternatorDropLarge, Severity.Caution, run, drop, limit);
    }

    private bool IsAlternatorCable(int run) =>
        build.AlternatorPlace is { } place && (build.Runs[run].From == place || build.Runs[run].To == place);

    /// <summary>
    /// Where several amplifiers have no other way back, the return that they share stands against the strongest supply run that
    /// they share, or, where each has its own, against these together.
    /// </summary>
    private void JudgeSharedReturn(int run)
    {
        IReadOnlyList<int> sharing = circuit.SharedReturns.AmplifiersOver(run);
        if (sharing.Count < 2) return;
        build.Meter.Count(CostOfSharing * build.Runs.Count);
        double supplies = sharing.Sum(amplifier => SiemensMetresAt(amplifier).Supply);
        double[] common = [.. Enumerable.Range(0, build.Runs.Count)
            .Where(other => !sharing.Except(circuit.SharedSupplies.AmplifiersOver(other)).Any())
            .Select(other => 1 / design.Conductors[other].OhmsPerMetreAt20)];
        double limit = common.Length > 0 ? Math.Min(supplies, common.Max()) : supplies;
        double back = 1 / design.Conductors[run].OhmsPerMetreAt20;
        if (Significant.Exceeds(limit, back)) Add(ViolationKind.SharedReturnBelowSupply, Severity.Caution, run, back, limit);
    }

    private void JudgeHeat(int run, double ampacity)
    {
        if (Significant.Exceeds(envelope.ThermalAmps[run], ampacity))
            Add(ViolationKind.OverAmpacity, Severity.Fail, run, envelope.ThermalAmps[run], ampacity);
    }

    /// <summary>Holds what can enter a run at an end against its ampacity.</summary>
    private void JudgeProtection(RunEnd end, double single)
    {
        double entering = protection.EnteringAmps(end);
        if (double.IsInfinity(entering)) return;
        int count = design.Conductors[end.Run].Count;
        if (!Significant.Exceeds(entering, protection.IsProtectedPerConductor(end) ? single * count : single)) return;
        FittedFuse? own = design.FuseAt(end);
        ViolationKind kind = !Significant.Exceeds(entering, single * count) ? ViolationKind.ParallelUnprotected
            : own is null ? ViolationKind.FuseMissingAtReduction
            : own.Decided is Decided.Chosen ? ViolationKind.NoFuseFits
            : ViolationKind.FuseAboveConductor;
        Add(kind, Severity.Fail, end, entering, kind is ViolationKind.ParallelUnprotected ? single : single * count);
    }

    private void JudgeFuse(RunEnd end)
    {
        int run = end.Run;
        bool atBattery = topology.IsAtBattery(end);
        if (design.FuseAt(end) is not { } fuse)
        {
            if (!atBattery) return;
            bool charging = IsAlternatorCable(run);
            Add(
                charging ? ViolationKind.AlternatorCableUnprotected : ViolationKind.FuseMissingAtBattery,
                charging ? Severity.Caution : Severity.Fail, end, 0, 0);
            return;
        }

        double carrying = fuse.ContinuousAmps(design.Conductors[run].Count);
        if (Significant.Exceeds(envelope.ThermalAmps[run], carrying))
            Add(ViolationKind.FuseBelowLoad, Severity.Fail, end, envelope.ThermalAmps[run], carrying);
        else if (Significant.Exceeds(envelope.ThermalAmps[run], carrying * fuse.HotShare))
            Add(ViolationKind.FuseHotBelowLoad, Severity.Caution, end, envelope.ThermalAmps[run], carrying * fuse.HotShare);
        if (!fuse.Family.IsMadeIn(fuse.RatingAmps))
            Add(ViolationKind.FuseNotStandard, Severity.Caution, end, fuse.RatingAmps, 0);
        if (Significant.Exceeds(build.HighestSupplyVolts, fuse.VoltageRatingVolts))
            Add(ViolationKind.FuseVoltageTooLow, Severity.Fail, end, fuse.VoltageRatingVolts, build.HighestSupplyVolts);
        JudgeDistance(end, fuse, atBattery);
        if (fuse.Decided is Decided.Chosen && !NoFuseFits(run))
            Add(ViolationKind.FuseChosen, Severity.Caution, end, fuse.RatingAmps, 0);
    }

    /// <summary>Whether it was found already that no fuse fits a run; asking for one then would contradict that.</summary>
    private bool NoFuseFits(int run) =>
        violations.Exists(violation => violation.Kind is ViolationKind.NoFuseFits && violation.Index == run);

    private void JudgeDistance(RunEnd end, FittedFuse fuse, bool atBattery)
    {
        if (fuse.Decided is Decided.Chosen) return;
        double most = build.Ruleset["fuse.max-distance"].Value, close = build.Ruleset["fuse.near-distance"].Value;
        if (Significant.Exceeds(fuse.DistanceMetres, most))
            Add(ViolationKind.FuseTooFar, atBattery ? Severity.Fail : Severity.Caution, end, fuse.DistanceMetres, most);
        else if (atBattery && Significant.Exceeds(fuse.DistanceMetres, close))
            Add(ViolationKind.FuseNotNear, Severity.Info, end, fuse.DistanceMetres, close);
    }
}
