using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Published;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// On builds of 11 to 40 runs the bound is the one that a general-purpose constraint solver finds (Google.OrTools CP-SAT). No
/// choice of that solver's which the full assessment passes is lighter than what the engine says is proven; the engine's own
/// passes too.
/// </summary>
public class OutsideSolverTests
{
    private const int Builds = 100;

    /// <summary>Aimed a tenth lower, the solution of the linear problem keeps the goal in full.</summary>
    private const double Aim = 0.9;

    /// <summary>What rounding each of 40 runs to a millionth can add up to.</summary>
    private const double Rounding = 4e-5;

    [Fact]
    public void The_bound_and_the_choice_agree_with_a_constraint_solver()
    {
        int compared = 0;
        for (int seed = 70_000; compared < Builds; seed++)
        {
            Build build = new RandomBuilds(seed).Tree(5 + seed % 15);
            var problem = new ChoiceProblem(build);
            Goal goal = problem.Goals[0];
            if (Agreed(problem, goal, Aim, seed) is not { } outside || Agreed(problem, goal, 1, seed) is not { } bounding)
                continue;
            if (problem.Task.Evaluate(outside) is not { } passed || !problem.Keeps(passed, goal)) continue;
            Assessment answer = Assessed.WithinWork(build, WorkBudgets.Sizing);
            ConductorChoice[] chosen =
                [.. answer.Runs.Select(
                    run => new ConductorChoice(
                Conductor.Of(ConductorSize.Of(run.Conductor.Size), run.Conductor.Material), run.Conductor.Count))];
            Assert.True(problem.Keeps(problem.Task.Evaluate(chosen)!, goal), $"seed {seed}: the choice does not keep the goal");
            double weight = problem.Task.WeightOf(chosen), least = problem.Task.WeightOf(bounding);
            Assert.True(weight >= least * (1 - Rounding), $"seed {seed}: {weight} is below the bound {least}");
            double proven = weight * (1 - answer.Sizing!.Gap!.Value), found = problem.Task.WeightOf(outside);
            Assert.True(proven <= found * (1 + Rounding), $"seed {seed}: {found} is below what is said to be proven, {proven}");
            Assert.InRange(answer.Sizing.Gap.Value, 0, Math.Max(0, 1 - least / weight) + Rounding);
            compared++;
        }
    }

    /// <summary>The solver's solution, once the engine's weighs the same.</summary>
    private static ConductorChoice[]? Agreed(ChoiceProblem problem, Goal goal, double share, int seed)
    {
        var linear = new LinearProblem(problem, goal, share);
        ConductorChoice[]? inside = linear.Solve(), outside = linear.SolveOutside();
        Assert.Equal(outside is null, inside is null);
        if (outside is not null)
            Near.Relative(
                problem.Task.WeightOf(outside), problem.Task.WeightOf(inside!), Rounding, $"seed {seed}, share {share}");
        return outside;
    }
}
