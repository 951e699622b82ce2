using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>Holds the opening of every fuse against what the conductors behind it withstand.</summary>
/// <remarks>
/// For each supply run and each battery that can feed it, the fault at its far end with that battery alone. Every fuse that
/// carries a part of it must open; the slowest of them decides. The conductor starts at the temperature it works at.
/// </remarks>
internal sealed class Clearings
{
    /// <summary>A fuse or run with less than this share of a fault has no part in it.</summary>
    public const double PartInFault = 0.01;

    /// <summary>How long a conductor withstands a current, in runs solved.</summary>
    private const double CostOfWithstand = 2;

    private readonly CompleteBuild build;
    private readonly SupplyTopology topology;
    private readonly DesignEvaluation evaluation;
    private readonly FaultCurrents faults;

    public Clearings(BuildModel model, DesignEvaluation evaluation, FaultCurrents faults)
    {
        build = model.Build;
        topology = model.Topology;
        this.evaluation = evaluation;
        this.faults = faults;
    }

    /// <summary>The worst clearing of each protected supply run, in the order of the runs.</summary>
    public IReadOnlyList<Clearing> Worst()
    {
        List<Clearing> worst = [];
        foreach (int run in topology.Outwards)
        {
            if (!evaluation.Protection.IsUnprotected(run) && WorstOf(run) is { } clearing) worst.Add(clearing);
        }

        worst.Sort((one, other) => one.Run.CompareTo(other.Run));
        return worst;
    }

    private Clearing? WorstOf(int run)
    {
        Clearing? worst = null;
        for (int battery = 0; battery < build.Batteries.Count; battery++) worst = Worse(worst, Of(run, battery));
        return worst;
    }

    private static Clearing? Worse(Clearing? one, Clearing? other) =>
        one is null || (other is not null && Significant.Exceeds(other.Strain, one.Strain)) ? other ?? one : one;

    /// <summary>The clearing of one run's fault by one battery, or <c>null</c> where that battery has no part in it.</summary>
    private Clearing? Of(int run, int battery)
    {
        FaultCircuit.Fault atStart = faults.SmallestAt(topology.NodeAt(RunEnd.Near(run)), battery);
        FaultCircuit.Fault atEnd = faults.SmallestAt(topology.NodeAt(RunEnd.Far(run)), battery);
        double inRunAtStart = Math.Abs(atStart.BranchAmps(run)), inRunAtEnd = Math.Abs(atEnd.BranchAmps(run));
        bool moreAtStart = Significant.Exceeds(inRunAtStart, inRunAtEnd);
        (FaultCircuit.Fault fault, double inRun) = moreAtStart ? (atStart, inRunAtStart) : (atEnd, inRunAtEnd);
        double whole = Math.Max(atStart.Amps, atEnd.Amps);
        if (inRun <= PartInFault * whole) return null;
        double conductorAmps = inRun / evaluation.Design.Conductors[run].Count;
        double withstand = WithstandSeconds(run, conductorAmps);
        Clearing? worst = null;
        foreach (ProtectiveDevice device in evaluation.Protection.For(run))
        {
            double amps = Math.Abs(fault.BranchAmps(device.Run));
            if (amps <= PartInFault * inRun) continue;
            worst = Worse(
                worst, new Clearing(run, battery, device, amps, conductorAmps, device.ClearingSeconds(amps), withstand));
        }

        return worst;
    }

    private double WithstandSeconds(int run, double amps)
    {
        build.Meter.Count(CostOfWithstand);
        CompleteRun described = build.Runs[run];
        return ShortCircuit.WithstandSeconds(
            evaluation.Design.Conductors[run].Conductor,
            amps,
            Math.Min(evaluation.Envelope.Celsius[run], described.InsulationCelsius),
            ShortCircuit.LimitFor(described.InsulationCelsius, build.Ruleset),
            described.AirCelsius,
            build.Ruleset.ShortCircuit);
    }
}
