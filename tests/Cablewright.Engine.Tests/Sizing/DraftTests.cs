using System.Collections.Concurrent;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>The choice that is found before any proof: on builds of 20 to 41 open runs, half of them with two levels of blocks.</summary>
public class DraftTests
{
    private const int Builds = 30;

    /// <summary>What the draft may take of the usual work budget.</summary>
    private const double Share = 0.05;

    [Fact]
    public void Weighs_little_more_than_the_proven_optimum()
    {
        var proven = new ConcurrentBag<int>();
        Parallel.For(0, Builds, i =>
        {
            Build build = new RandomBuilds(90_000 + i).Tree(10 + i % 11);
            foreach (Goal goal in new ChoiceProblem(build).Goals)
            {
                var problem = new ChoiceProblem(build);
                if (Draft(problem, goal) is not { } draft) continue;
                var search = new GoalSearch(new SizingTask(problem.Build, new Evaluator(problem.Build), Budget), goal);
                search.Run();
                if (!search.IsProven) return;
                Assert.True(draft.Weight <= 1.05 * search.Best!.Weight, $"build {i}: {draft.Weight}, optimum {search.Best.Weight}");
                proven.Add(i);
                return;
            }

            Assert.Fail($"build {i}: no draft");
        });
        Assert.True(proven.Count >= Builds / 2, $"only {proven.Count} optima are proven");
    }

    /// <summary>Work is counted in runs solved, so that this holds on every machine.</summary>
    [Fact]
    public void Takes_a_small_part_of_the_work_of_a_search() => Parallel.For(0, Builds, i =>
    {
        var problem = new ChoiceProblem(new RandomBuilds(91_000 + i).Tree(20 + i));
        foreach (Goal goal in problem.Goals) Draft(problem, goal);
        Assert.True(problem.Task.Work <= Share * Budget, $"build {i}: {problem.Task.Work} runs solved");
    });

    private static double Budget => RulesetLibrary.Newest["sizing.work-budget"].Value;

    private static Trial? Draft(ChoiceProblem problem, Goal goal)
    {
        IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(goal.MostParallel);
        var rules = new ChoiceRules(problem.Task);
        var trials = new Trials(problem.Task, goal, rules, double.PositiveInfinity);
        new Draft(problem.Task, goal, rules, candidates, ReturnRule.Of(problem.Task, rules, candidates)).Find(trials);
        return trials.Best;
    }
}
