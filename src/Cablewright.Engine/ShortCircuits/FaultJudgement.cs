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

/// <summary>Holds the rules about short circuits and overloads against a decision.</summary>
internal sealed class FaultJudgement
{
    private readonly CompleteBuild build;
    private readonly SupplyShape shape;
    private readonly DesignEvaluation evaluation;
    private readonly FaultCurrents faults;
    private readonly Overload overload;
    private readonly List<Guard> fuses = [];
    private readonly List<Breach> breaches = [];
    private readonly Dictionary<int, double> largest = [];

    private FaultJudgement(BuildModel model, DesignEvaluation evaluation)
    {
        build = model.Build;
        shape = model.Topology;
        this.evaluation = evaluation;
        faults = new FaultCurrents(model, evaluation.Decision);
        overload = new Overload(build, evaluation);
        foreach (RunEnd end in shape.Outwards.SelectMany(RunEnd.Of)) AddFuse(end);
    }

    /// <summary>Judges what short circuits and overloads would do to a decision.</summary>
    /// <param name="model">The build.</param>
    /// <param name="evaluation">The decision, worked out.</param>
    public static FaultReport Of(BuildModel model, DesignEvaluation evaluation)
    {
        var judgement = new FaultJudgement(model, evaluation);
        SupplyShape shape = model.Topology;
        IReadOnlyList<Clearing> clearings = new Clearings(model, evaluation, judgement.faults).Worst();
        foreach (Clearing clearing in clearings) judgement.JudgeClearing(clearing);
        foreach (RunEnd end in shape.Outwards.Order().SelectMany(RunEnd.Of)) judgement.JudgeFuse(end, clearings);

        judgement.JudgeBody();
        return new FaultReport(clearings, judgement.largest, judgement.breaches);
    }

    /// <summary>A verdict that hangs on a band that is only recalled is never more than a caution.</summary>
    private void JudgeClearing(Clearing clearing)
    {
        Severity severity = clearing.Guard.Fuse.Family.OpeningBand.IsRead ? Severity.Fail : Severity.Caution;
        if (clearing.OpensSeconds is not { } opens)
        {
            double certain = clearing.Guard.Fuse.Family.OpeningBand.CertainFrom * clearing.Guard.PassingAmps;
            breaches.Add(new Breach(BreachKind.FuseMayNotOpen, severity, clearing.Run, false, clearing.GuardAmps, certain));
        }
        else if (!clearing.IsInTime)
        {
            breaches.Add(
                new Breach(BreachKind.FuseOpensTooLate, severity, clearing.Run, false, opens, clearing.WithstandSeconds));
        }

        JudgeOverload(clearing.Run, clearing.Guard);
    }

    private void JudgeOverload(int run, Guard guard)
    {
        double limit = build.Runs[run].InsulationCelsius + build.Ruleset["heat.overload-margin"].Value;
        if (overload.Worst(run, guard, limit) is { } worst)
            breaches.Add(new Breach(BreachKind.OverloadHurts, Severity.Caution, run, guard.End.IsFar, worst.Celsius, limit));
    }

    private void JudgeFuse(RunEnd end, IReadOnlyList<Clearing> clearings)
    {
        if (evaluation.Decision.FuseAt(end) is not { } fuse) return;
        int node = shape.NodeAt(end);
        double fault = largest.TryGetValue(node, out double amps) ? amps : largest[node] = faults.LargestAt(node);
        if (Significant.Exceeds(fault, fuse.InterruptsAmps))
        {
            bool stated = fuse.InterruptingRatingAmps is not null;
            breaches.Add(new Breach(
                stated ? BreachKind.InterruptingTooLow : BreachKind.InterruptingUnknown,
                stated ? Severity.Fail : Severity.Caution, end.Run, end.IsFar, fault, fuse.InterruptsAmps));
        }

        if (!fuse.Family.OpeningBand.IsRead && clearings.Any(clearing => clearing.IsInTime && clearing.Guard.End == end))
            breaches.Add(new Breach(BreachKind.BandRecalled, Severity.Caution, end.Run, end.IsFar));
        JudgeCoordination(end, fuse);
    }

    /// <summary>
    /// In a fault behind a fuse, every other fuse that carries it and does not guard the same run should hold longer.
    /// </summary>
    private void JudgeCoordination(RunEnd end, FittedFuse fuse)
    {
        int run = end.Run, behind = shape.NodeAt(end.Other);
        for (int battery = 0; battery < build.Batteries.Count; battery++)
        {
            FaultCircuit.Fault fault = faults.SmallestAt(behind, battery);
            double passing = fuse.PassingAmps(evaluation.Decision.Conductors[run].Count);
            double own = Math.Abs(fault.BranchAmps(run));
            if (fuse.Family.OpeningBand.SlowestSeconds(own / passing) is not { } slowest) continue;
            foreach (Guard before in fuses)
            {
                double carried = before.Run == run ? 0 : Math.Abs(fault.BranchAmps(before.Run));
                if (carried <= Clearings.PartInFault * own) continue;
                double fastest = before.Fuse.Family.OpeningBand.FastestSeconds(carried / before.PassingAmps);
                if (!Significant.Exceeds(slowest, fastest)) continue;
                breaches.Add(
                    new Breach(BreachKind.NotSelective, Severity.Caution, run, end.IsFar, slowest, fastest) { Other = before.Run });
                return;
            }
        }
    }

    private void JudgeBody()
    {
        double limit = build.Ruleset["return.body-drop"].Value * build.NominalFactor;
        if (Significant.Exceeds(evaluation.Currents.BodyVolts, limit))
            breaches.Add(new Breach(BreachKind.BodyDropLarge, Severity.Caution, 0, false, evaluation.Currents.BodyVolts, limit));
    }

    private void AddFuse(RunEnd end)
    {
        if (evaluation.Decision.FuseAt(end) is { } fuse)
            fuses.Add(new Guard(end, fuse, fuse.PassingAmps(evaluation.Decision.Conductors[end.Run].Count)));
    }
}
