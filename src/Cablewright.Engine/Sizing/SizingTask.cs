using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>What is left open of a build, and how a choice is worked out and weighed.</summary>
internal sealed class SizingTask
{
    /// <summary>Each further conductor of a run counts a little, so that among equals the one of fewer pieces wins.</summary>
    private const double PieceWeight = 2e-6;

    private readonly Prefer prefer;
    private readonly Dictionary<Stock, IReadOnlyList<Violation>?> broken = [];
    private readonly Dictionary<Stock, IReadOnlyList<ConductorChoice>[]> candidates = [];
    private readonly int[] supplies;
    private double workLimit = double.PositiveInfinity;

    public SizingTask(Evaluator evaluator)
    {
        Evaluator = evaluator;
        CompleteBuild build = Build;
        prefer = build.Stated.Sizing.Prefer;
        supplies = GroundRule.SuppliesOf(Model);
        SupplyOf = [.. supplies.Select(supply => supply >= 0 && build.Runs[supply].Given is not null ? -1 : supply)];
        Open = [.. Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Given is null)];
        Paths = new Bridges(Model.Circuit, build.Draws.Count);
        Ways = ShortestWays.Of(Model.Circuit, build.Draws.Count);
        Costs = new JobCosts(evaluator, Ways);
        int[] ordered = [.. Open.OrderBy(run => build.Stated.Amplifiers.Any(IsAt(run)) ? 0 : 1)];
        Tree = new RunTree(Paths.Of, ordered);
        HeuristicTree = Enumerable.Range(0, Ways.Length).All(load => Ways[load].Order().SequenceEqual(Paths.Of[load].Order()))
            ? Tree
            : new RunTree(Ways, ordered);
    }

    public Evaluator Evaluator { get; }

    public BuildModel Model => Evaluator.Model;

    public CompleteBuild Build => Model.Build;

    public JobCosts Costs { get; }

    public Bridges Paths { get; }

    /// <summary>The open runs of which is certain whose currents they carry.</summary>
    public RunTree Tree { get; }

    /// <summary>One way of each amplifier's current.</summary>
    public int[][] Ways { get; }

    /// <summary>The open runs on those.</summary>
    public RunTree HeuristicTree { get; }

    /// <summary>The runs whose conductor is to be chosen.</summary>
    public int[] Open { get; }

    /// <summary>For each run the open supply whose conductor it has as the ground of the same amplifier, or -1.</summary>
    public int[] SupplyOf { get; }

    /// <summary>Whether as much work was done as is allowed at present.</summary>
    public bool IsOutOfWork => Build.Meter.Used > workLimit || Build.Meter.IsUsedUp;

    /// <summary>Counts work of the search itself.</summary>
    /// <param name="units">How much, in runs solved.</param>
    public void Count(double units) => Build.Meter.Count(units);

    /// <summary>Allows a share of the work that is left; nothing where none is.</summary>
    public void Allow(double share)
    {
        WorkMeter meter = Build.Meter;
        workLimit = Math.Min(meter.Budget, meter.Used + share * Math.Max(0, meter.Budget - meter.Used));
    }

    /// <summary>The candidates of each run: the given conductor, or those to choose from, the weakest first.</summary>
    public IReadOnlyList<ConductorChoice>[] Candidates(Stock stock)
    {
        if (!candidates.TryGetValue(stock, out IReadOnlyList<ConductorChoice>[]? known))
        {
            known = [.. Enumerable.Range(0, Build.Runs.Count).Select(run => CandidatesOf(run, stock))];
            candidates.Add(stock, known);
        }

        return known;
    }

    private IReadOnlyList<ConductorChoice> CandidatesOf(int run, Stock stock)
    {
        CompleteRun described = Build.Runs[run];
        if (described.Given is { } given) return [new ConductorChoice(given, described.GivenCount ?? 1)];
        if (stock is not Stock.Any && supplies[run] is >= 0 and var supply)
        {
            if (Build.Runs[supply].Given is not null) return AsGiven(CandidatesOf(supply, stock), described, stock);
            described = described with { Wish = Build.Runs[supply].Wish };
        }

        return ForStrap(run, CandidateList.For(described, Build, Costs.Prices, stock));
    }

    /// <summary>
    /// A ground is the cable that its supply is given as; where that does not do, as when it does not bear the current, a larger.
    /// </summary>
    private IReadOnlyList<ConductorChoice> AsGiven(
        IReadOnlyList<ConductorChoice> supply, CompleteRun ground, Stock stock) => stock is Stock.Single ? supply :
    [
        .. supply,
        .. CandidateList.For(ground, Build, Costs.Prices, stock)
            .Where(choice => Significant.Exceeds(supply[0].OhmsPerMetreAt20, choice.OhmsPerMetreAt20)),
    ];

    /// <summary>Of a strap's candidates those that are large enough for one, where there are any.</summary>
    private IReadOnlyList<ConductorChoice> ForStrap(int run, IReadOnlyList<ConductorChoice> all)
    {
        if (!Model.Circuit.IsStrap(run)) return all;
        ConductorChoice[] large = [.. all.Where(choice => !Significant.Exceeds(
            Build.Ruleset.Return.LeastStrap.Value, choice.Conductor.CopperEquivalentMm2 * choice.Count))];
        return large.Length > 0 ? large : all;
    }

    /// <summary>What a choice for one run weighs; a given conductor weighs nothing.</summary>
    public double WeightOf(int run, ConductorChoice choice)
    {
        if (Build.Runs[run].Given is not null) return 0;
        double weight = prefer is Prefer.Mass
            ? choice.KilogramsPerMetre * Build.Runs[run].LengthMetres
            : Costs.Of(run, choice);
        return weight * (1 + PieceWeight * (choice.Count - 1));
    }

    /// <summary>What the chosen conductors weigh together.</summary>
    public double WeightOf(IReadOnlyList<ConductorChoice> conductors) => Open.Sum(run => WeightOf(run, conductors[run]));

    /// <summary>Works out a choice; it depends on nothing that was tried before.</summary>
    /// <returns><c>null</c> where the voltage collapses.</returns>
    public DesignEvaluation? Evaluate(ConductorChoice[] conductors) => Evaluator.TryEvaluate(WithoutFuses(conductors));

    /// <summary>
    /// The rules broken where every open run is as strong as it can be; <c>null</c> where the voltage collapses even so.
    /// </summary>
    public IReadOnlyList<Violation>? BrokenByStrongest(Stock stock)
    {
        if (!broken.TryGetValue(stock, out IReadOnlyList<Violation>? known))
        {
            known = Evaluate([.. Candidates(stock).Select(choices => choices[^1])]) is { } evaluation
                ? [.. evaluation.Violations, .. FaultRuleBook.Report(Model, evaluation).Violations]
                : null;
            broken.Add(stock, known);
        }

        return known;
    }

    /// <summary>What a run's conductors are to be rated for: usually a supply's for full output.</summary>
    public double RequiredAmps(int run, Goal goal, double continuous, double full) =>
        goal.IsUsual && Build.Runs[run] is { Side: Side.Supply, Isolator: null } ? Math.Max(continuous, full) : continuous;

    private Func<Amplifier, bool> IsAt(int run) =>
        amplifier => Build.Runs[run].EndsAt(amplifier.Id);

    /// <summary>A choice before its fuses are placed.</summary>
    public static Design WithoutFuses(ConductorChoice[] conductors) =>
        new(conductors, new FittedFuse?[conductors.Length], new FittedFuse?[conductors.Length]);
}
