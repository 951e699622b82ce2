using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Network;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// What a job costs, run by run: the conductors, a terminal at each of their ends, and a fuse with its holder, for each conductor
/// where each has one, at every end where one that is left open is certain to stand.
/// </summary>
/// <remarks>
/// A run's cost depends on its own conductor alone, so that the costs of all runs add and a bound of the choice covers them. So
/// fuses at reductions, which stand or not as other runs are chosen, and distribution blocks are left out; and a fuse counts at
/// the price of the family that the run's full current with nothing lost comes to.
/// </remarks>
internal sealed class JobCosts
{
    private const int EndsOfConductor = 2;

    private readonly BuildModel model;
    private readonly FuseLadders ladders;
    private readonly double[] fullAmps;
    private readonly Dictionary<(int Run, ConductorChoice Choice), double> known = [];

    /// <summary>Prepares the costs of a build's runs.</summary>
    /// <param name="evaluator">The build.</param>
    /// <param name="ways">One way of each amplifier's current.</param>
    public JobCosts(Evaluator evaluator, int[][] ways)
    {
        model = evaluator.Model;
        ladders = evaluator.FuseLadders;
        Prices = new PriceList(Build.Stated.Sizing, Build.Ruleset);
        fullAmps = new double[Build.Runs.Count];
        for (int load = 0; load < ways.Length; load++)
        {
            double amps = CircuitSolver.Amps(Build.Draws[load].Full, model.Circuit.SourceVoltsOf(load));
            foreach (int run in ways[load].Where(branch => branch < fullAmps.Length)) fullAmps[run] += amps;
        }
    }

    /// <summary>The prices.</summary>
    public PriceList Prices { get; }

    private CompleteBuild Build => model.Build;

    /// <summary>What a run costs with a choice, in the currency of the prices or in kilograms of copper.</summary>
    public double Of(int run, ConductorChoice choice)
    {
        if (!known.TryGetValue((run, choice), out double cost)) known.Add((run, choice), cost = Sum(run, choice));
        return cost;
    }

    private double Sum(int run, ConductorChoice choice)
    {
        CompleteRun of = Build.Runs[run];
        double each = Prices.PerMetre(choice.Conductor) * of.LengthMetres
            + EndsOfConductor * Prices.PerTerminal(choice.Conductor.Size);
        return choice.Count * each + (of.Side is Side.Supply ? RunEnd.Of(run).Sum(end => FusesAt(end, choice)) : 0);
    }

    private double FusesAt(RunEnd end, ConductorChoice choice)
    {
        FuseSlot slot = Build.SlotAt(end);
        if (slot.Refused || slot.RatingAmps is not null) return 0;
        if (!slot.MustBeFitted && !model.Topology.IsAtBattery(end)) return 0;
        int count = slot.PerConductor ?? true ? choice.Count : 1;
        double ampacity = model.Ampacities.Of(end.Run, choice.Conductor).LimitAmps;
        return count * Prices.PerFuse(ladders.At(end).For(fullAmps[end.Run] / count, ampacity));
    }
}
