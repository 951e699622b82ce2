using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// The choice that is found before any proof: on builds of 20 to 41 open runs, half of them with two levels of blocks.
/// </summary>
public class ConstructiveHeuristicTests
{
    private const int Builds = 30;

    /// <summary>What the draft may take of the usual work budget.</summary>
    private const double Share = 0.2;

    [Fact]
    public void Weighs_little_more_than_the_choice_in_the_end() => Parallel.For(0, Builds, i =>
    {
        Build build = new RandomBuilds(90_000 + i).Tree(10 + i % 11);
        foreach (Goal goal in new ChoiceProblem(build).Goals)
        {
            if (ConstructiveHeuristic(new ChoiceProblem(build), goal) is not { } draft) continue;
            var problem = new ChoiceProblem(build, WorkBudgets.Sizing);
            double best = new GoalSearch(problem.Task, goal).Run().Best!.Weight;
            Assert.True(draft.Weight <= 1.25 * best, $"build {i}: {draft.Weight}, in the end {best}");
            return;
        }

        Assert.Fail($"build {i}: no draft");
    });

    /// <summary>Work is counted in runs solved, so that this holds on every machine.</summary>
    [Fact]
    public void Takes_a_small_part_of_the_work_of_a_search() => Parallel.For(0, Builds, i =>
    {
        var problem = new ChoiceProblem(new RandomBuilds(91_000 + i).Tree(20 + i));
        ConstructiveHeuristic(problem, problem.Goals[0]);
        Assert.True(problem.Build.Meter.Used <= Share * WorkBudgets.Sizing, $"build {i}: {problem.Build.Meter.Used} runs solved");
    });

    /// <summary>
    /// What stands in where no draft is found: the same volts on every metre, which is rough but of the right order.
    /// </summary>
    [Fact]
    public void Even_losses_weigh_at_most_three_times_a_draft() => Parallel.For(0, Builds, i =>
    {
        var problem = new ChoiceProblem(new RandomBuilds(92_000 + i).Tree(8 + i % 8));
        foreach (Goal goal in problem.Goals)
        {
            if (ConstructiveHeuristic(problem, goal) is not { } draft) continue;
            IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(goal.Stock);
            var taper = new TaperRule(problem.Task, candidates);
            var trials = new Trials(problem.Task, goal, new ChoiceRules(problem.Task), taper, double.PositiveInfinity);
            if (!trials.Try([.. candidates.Select(choices => choices[^1])]).IsKept) return;
            new EvenLoss(problem.Task, goal.IsUsual, candidates).Run(trials);
            Assert.True(trials.Best!.Weight <= 3 * draft.Weight, $"build {i}: {trials.Best.Weight}, draft {draft.Weight}");
            return;
        }
    });

    /// <summary>So many runs in series have more choices than anyone could go over.</summary>
    [Theory]
    [InlineData(20, 0.1)]
    [InlineData(40, 0.1)]
    public void Runs_one_after_another_are_chosen_well_too(int runs, double gap)
    {
        Assessment answer = Assessor.Assess(Chain(runs), RulesetLibrary.Newest, advises: false);
        Assert.NotEqual(Verdict.Fail, answer.Verdict);
        Assert.InRange(answer.Sizing!.Gap!.Value, 0, gap);
    }

    /// <summary>
    /// A choice that is being worked out is worked out to its end: 150 runs in series of many sizes want a fuse at nearly every
    /// joint.
    /// </summary>
    [Fact]
    public void The_work_on_any_number_of_runs_is_bounded()
    {
        CompleteBuild build = BuildCompletion.Complete(Chain(150), RulesetLibrary.Newest, new WorkMeter(WorkBudgets.Sizing));
        Sizer.Size(new Evaluator(build));
        Assert.InRange(build.Meter.Used, 0, 1.5 * WorkBudgets.Sizing);
    }

    private static Build Chain(int runs)
    {
        Build one = SampleBuilds.OneAmplifier();
        return one with
        {
            Amplifiers = [one.Amplifiers[0] with { RatedOutputWatts = 400 }],
            Runs =
            [
                .. Enumerable.Range(0, runs).Select(piece => new Run
                {
                    Id = $"piece{piece}",
                    From = piece == 0 ? one.Runs[0].From : $"joint{piece}",
                    To = piece == runs - 1 ? one.Runs[0].To : $"joint{piece + 1}",
                    LengthMetres = 0.1,
                    JointOhms = 0.00001,
                }),
                .. one.Runs.Skip(1),
            ],
        };
    }

    private static Trial? ConstructiveHeuristic(ChoiceProblem problem, Goal goal)
    {
        IReadOnlyList<ConductorChoice>[] candidates = problem.Task.Candidates(goal.Stock);
        var rules = new ChoiceRules(problem.Task);
        var trials = new Trials(problem.Task, goal, rules, new TaperRule(problem.Task, candidates), double.PositiveInfinity);
        new ConstructiveHeuristic(problem.Task, goal, rules, candidates, ReturnRule.Of(problem.Task, goal, rules, candidates))
            .Find(trials);
        return trials.Best;
    }
}
