using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>Holds the rules about short circuits and overloads against a design.</summary>
internal sealed class FaultJudgement
{
    private readonly CompleteBuild build;
    private readonly SupplyTopology topology;
    private readonly DesignEvaluation evaluation;
    private readonly FaultCurrents faults;
    private readonly Overload overload;
    private readonly List<ProtectiveDevice> fuses = [];
    private readonly List<Violation> violations = [];
    private readonly Dictionary<int, double> largest = [];

    private FaultJudgement(BuildModel model, DesignEvaluation evaluation)
    {
        build = model.Build;
        topology = model.Topology;
        this.evaluation = evaluation;
        faults = new FaultCurrents(model, evaluation.Design);
        overload = new Overload(build, evaluation);
        foreach (RunEnd end in topology.Outwards.SelectMany(RunEnd.Of)) AddFuse(end);
    }

    /// <summary>Judges what short circuits and overloads would do to a design.</summary>
    /// <param name="model">The build.</param>
    /// <param name="evaluation">The design, worked out.</param>
    public static FaultReport Of(BuildModel model, DesignEvaluation evaluation)
    {
        var judgement = new FaultJudgement(model, evaluation);
        SupplyTopology topology = model.Topology;
        IReadOnlyList<Clearing> clearings = new Clearings(model, evaluation, judgement.faults).Worst();
        foreach (Clearing clearing in clearings) judgement.JudgeClearing(clearing);
        foreach (RunEnd end in topology.Outwards.Order().SelectMany(RunEnd.Of)) judgement.JudgeFuse(end, clearings);

        judgement.JudgeBody();
        return new FaultReport(clearings, judgement.largest, judgement.violations);
    }

    /// <summary>A verdict that hangs on a band that is only recalled is never more than a caution.</summary>
    private void JudgeClearing(Clearing clearing)
    {
        Severity severity = clearing.ProtectiveDevice.Fuse.Family.TimeCurrentBand.IsRead ? Severity.Fail : Severity.Caution;
        if (clearing.ClearingSeconds is not { } opens)
        {
            double certain = clearing.ProtectiveDevice.Fuse.Family.TimeCurrentBand.CertainFrom
                * clearing.ProtectiveDevice.TotalRatingAmps;
            violations.Add(
                new Violation(ViolationKind.FuseMayNotOpen, severity, clearing.Run, false, clearing.DeviceAmps, certain));
        }
        else if (!clearing.IsInTime)
        {
            violations.Add(
                new Violation(ViolationKind.FuseClearsTooLate, severity, clearing.Run, false, opens, clearing.WithstandSeconds));
        }

        JudgeOverload(clearing.Run, clearing.ProtectiveDevice);
    }

    private void JudgeOverload(int run, ProtectiveDevice device)
    {
        double limit = build.Runs[run].InsulationCelsius + build.Ruleset["heat.overload-margin"].Value;
        if (overload.Worst(run, device, limit) is { } worst)
            violations.Add(
                new Violation(ViolationKind.OverloadHurts, Severity.Caution, run, device.End.IsFar, worst.Celsius, limit));
    }

    private void JudgeFuse(RunEnd end, IReadOnlyList<Clearing> clearings)
    {
        if (evaluation.Design.FuseAt(end) is not { } fuse) return;
        int node = topology.NodeAt(end);
        double fault = largest.TryGetValue(node, out double amps) ? amps : largest[node] = faults.LargestAt(node);
        if (Significant.Exceeds(fault, fuse.InterruptsAmps))
        {
            bool stated = fuse.InterruptingRatingAmps is not null;
            violations.Add(new Violation(
                stated ? ViolationKind.InterruptingTooLow : ViolationKind.InterruptingUnknown,
                stated ? Severity.Fail : Severity.Caution, end.Run, end.IsFar, fault, fuse.InterruptsAmps));
        }

        if (!fuse.Family.TimeCurrentBand.IsRead
            && clearings.Any(clearing => clearing.IsInTime && clearing.ProtectiveDevice.End == end))
            violations.Add(new Violation(ViolationKind.BandRecalled, Severity.Caution, end.Run, end.IsFar));
        JudgeCoordination(end, fuse);
    }

    /// <summary>
    /// In a fault behind a fuse, every other fuse that carries it and does not protect the same run should hold longer.
    /// </summary>
    private void JudgeCoordination(RunEnd end, FittedFuse fuse)
    {
        int run = end.Run, behind = topology.NodeAt(end.Other);
        for (int battery = 0; battery < build.Batteries.Count; battery++)
        {
            FaultCircuit.Fault fault = faults.SmallestAt(behind, battery);
            double totalRating = fuse.TotalRatingAmps(evaluation.Design.Conductors[run].Count);
            double own = Math.Abs(fault.BranchAmps(run));
            if (fuse.Family.TimeCurrentBand.SlowestSeconds(own / totalRating) is not { } slowest) continue;
            foreach (ProtectiveDevice before in fuses)
            {
                double carried = before.Run == run ? 0 : Math.Abs(fault.BranchAmps(before.Run));
                if (carried <= Clearings.PartInFault * own) continue;
                double fastest = before.Fuse.Family.TimeCurrentBand.FastestSeconds(carried / before.TotalRatingAmps);
                if (!Significant.Exceeds(slowest, fastest)) continue;
                var found = new Violation(ViolationKind.NotSelective, Severity.Caution, run, end.IsFar, slowest, fastest);
                violations.Add(found with { Other = before.Run });
                return;
            }
        }
    }

    private void JudgeBody()
    {
        double limit = build.Ruleset["return.body-drop"].Value * build.NominalFactor;
        if (Significant.Exceeds(evaluation.Envelope.BodyVolts, limit))
            violations.Add(
                new Violation(ViolationKind.BodyDropLarge, Severity.Caution, 0, false, evaluation.Envelope.BodyVolts, limit));
    }

    private void AddFuse(RunEnd end)
    {
        if (evaluation.Design.FuseAt(end) is { } fuse)
            fuses.Add(new ProtectiveDevice(end, fuse, fuse.TotalRatingAmps(evaluation.Design.Conductors[end.Run].Count)));
    }
}
