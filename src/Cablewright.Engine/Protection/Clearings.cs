using Cablewright.Engine.Circuits;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Protection;

/// <summary>Holds the opening of every fuse against what the conductors behind it withstand.</summary>
/// <remarks>
/// For each supply run and each battery that can feed it, the fault at its far end with that battery alone. Every fuse that
/// carries a part of it must open; the slowest of them decides. The conductor starts at the temperature it works at.
/// </remarks>
internal sealed class Clearings
{
    /// <summary>A fuse or run with less than this share of a fault has no part in it.</summary>
    public const double PartInFault = 0.01;

    private readonly CompleteBuild build;
    private readonly SupplyShape shape;
    private readonly Evaluation evaluation;
    private readonly FaultCurrents faults;

    public Clearings(CompleteBuild build, SupplyShape shape, Evaluation evaluation, FaultCurrents faults)
    {
        this.build = build;
        this.shape = shape;
        this.evaluation = evaluation;
        this.faults = faults;
    }

    /// <summary>The worst clearing of each guarded supply run.</summary>
    public IReadOnlyList<Clearing> Worst() =>
        [.. shape.Outwards
            .Where(run => !evaluation.Guards.IsUnguarded(run))
            .Select(WorstOf)
            .OfType<Clearing>()
            .OrderBy(clearing => clearing.Run)];

    private Clearing? WorstOf(int run) => Enumerable.Range(0, build.Batteries.Count)
        .Select(battery => Of(run, battery))
        .OfType<Clearing>()
        .MaxBy(clearing => Significant.Round(clearing.Strain));

    /// <summary>The clearing of one run's fault by one battery, or <c>null</c> where that battery has no part in it.</summary>
    private Clearing? Of(int run, int battery)
    {
        FaultCircuit.Fault atStart = faults.SmallestAt(shape.NodeAt(run, far: false), battery);
        FaultCircuit.Fault atEnd = faults.SmallestAt(shape.NodeAt(run, far: true), battery);
        double inRunAtStart = Math.Abs(atStart.BranchAmps(run)), inRunAtEnd = Math.Abs(atEnd.BranchAmps(run));
        bool moreAtStart = Significant.Exceeds(inRunAtStart, inRunAtEnd);
        (FaultCircuit.Fault fault, double inRun) = moreAtStart ? (atStart, inRunAtStart) : (atEnd, inRunAtEnd);
        double whole = Math.Max(atStart.Amps, atEnd.Amps);
        if (inRun <= PartInFault * whole) return null;
        double conductorAmps = inRun / evaluation.Decision.Conductors[run].Count;
        double withstand = WithstandSeconds(run, conductorAmps);
        return evaluation.Guards.For(run)
            .Select(guard => (Guard: guard, Amps: Math.Abs(fault.BranchAmps(guard.Run))))
            .Where(part => part.Amps > PartInFault * inRun)
            .Select(part => new Clearing(
                run, battery, part.Guard, part.Amps, conductorAmps, part.Guard.OpensSeconds(part.Amps), withstand))
            .MaxBy(clearing => Significant.Round(clearing.Strain));
    }

    private double WithstandSeconds(int run, double amps)
    {
        CompleteRun described = build.Runs[run];
        return ShortCircuit.WithstandSeconds(
            evaluation.Decision.Conductors[run].Conductor,
            amps,
            Math.Min(evaluation.Currents.Celsius[run], described.InsulationCelsius),
            ShortCircuit.LimitFor(described.InsulationCelsius, build.Ruleset),
            described.AirCelsius);
    }
}
