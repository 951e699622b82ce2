using Cablewright.Engine.Conductors;
using Cablewright.Engine.Sizing;
using Google.OrTools.Sat;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// The choice with currents and resistances taken as numbers, one for each candidate: the problem that bounds the engine's
/// search. It is solved by the engine's own method and by the constraint solver of Google.OrTools, CP-SAT.
/// </summary>
internal sealed class LinearProblem
{
    /// <summary>
    /// The solver counts in whole numbers: a tenth of a microvolt, a millionth of the weight, a tenth of a siemens metre. Much
    /// finer steps lead it to call a solution the best that is not.
    /// </summary>
    private const double VoltScale = 1e7;
    private const double WeightScale = 1e6;
    private const double ConductanceScale = 10;

    private readonly ChoiceProblem problem;
    private readonly Relaxation relaxation;
    private readonly double share;

    /// <summary>Takes the numbers at their proven floors.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="goal">The goal.</param>
    /// <param name="share">Share of the goal that each amplifier is to keep.</param>
    public LinearProblem(ChoiceProblem problem, Goal goal, double share)
    {
        this.problem = problem;
        this.share = share;
        IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(goal.Stock);
        var rules = new ChoiceRules(problem.Task);
        relaxation = new Relaxation(
            problem.Task, goal, rules, candidates, ReturnRule.Of(problem.Task, goal, rules, candidates));
    }

    /// <summary>The engine's solution.</summary>
    public ConductorChoice[]? Solve() => relaxation.IsInfeasible || relaxation.ProblemAt(share).Solve() is not { } picked
        ? null
        : [.. picked.Select((option, run) => relaxation.Options[run][option].Choice)];

    /// <summary>The constraint solver's solution.</summary>
    public ConductorChoice[]? SolveOutside()
    {
        if (relaxation.IsInfeasible) return null;
        var model = new CpModel();
        BoolVar[][] takes = [.. relaxation.Options.Select((options, run) =>
            options.Select((_, option) => model.NewBoolVar($"{run}.{option}")).ToArray())];
        foreach (BoolVar[] of in takes) model.AddExactlyOne(of);
        for (int amplifier = 0; amplifier < problem.Build.Draws.Count; amplifier++)
        {
            AddDrop(model, takes, amplifier);
            AddReturn(model, takes, amplifier);
        }

        model.Minimize(LinearExpr.WeightedSum(
            takes.SelectMany(of => of),
            relaxation.Options.SelectMany(of => of.Select(option => (long)Math.Round(option.Weight * WeightScale)))));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1,max_time_in_seconds:60" };
        CpSolverStatus status = solver.Solve(model);
        if (status is CpSolverStatus.Infeasible) return null;
        if (status is not CpSolverStatus.Optimal) throw new InvalidOperationException($"The solver ended with {status}.");
        return [.. takes.Select((of, run) => relaxation.Options[run][Array.FindIndex(of, solver.BooleanValue)].Choice)];
    }

    private void AddDrop(CpModel model, BoolVar[][] takes, int amplifier)
    {
        int[] runs = [.. problem.Task.Paths.Of[amplifier].Where(problem.Task.Open.Contains)];
        model.Add(LinearExpr.WeightedSum(
            runs.SelectMany(run => takes[run]),
            runs.SelectMany(run => relaxation.Options[run]
                .Select(option => (long)Math.Round(option.Ohms * relaxation.RunningAmps[run] * VoltScale))))
            <= (long)Math.Round(relaxation.LimitsAt(share)[amplifier] * VoltScale));
    }

    /// <summary>Of these builds each amplifier has one supply run and one return, both open and of the same cable.</summary>
    private void AddReturn(CpModel model, BoolVar[][] takes, int amplifier)
    {
        string id = problem.Build.Stated.Amplifiers[amplifier].Id;
        int feed = problem.Build.Runs.ToList().FindIndex(run => run.To == id);
        int back = problem.Build.Runs.ToList().FindIndex(run => run.From == id);
        model.Add(Conductance(takes, back) == Conductance(takes, feed));
    }

    private LinearExpr Conductance(BoolVar[][] takes, int run) => LinearExpr.WeightedSum(
        takes[run],
        relaxation.Options[run].Select(option => (long)Math.Round(ConductanceScale / option.Choice.OhmsPerMetreAt20)));
}
