using BenchmarkDotNet.Attributes;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Engine.Tests.Sizing;

namespace Cablewright.Benchmarks;

/// <summary>
/// The choice of all conductors and fuses, without words and questions; and beside it Google.OrTools CP-SAT on the linear problem
/// that only bounds that choice, with currents and resistances as numbers. An amplifier to every two runs.
/// </summary>
public class SizingBenchmarks
{
    private const double WholeWatts = 1200;

    private Build open = StarBuild.Open(StarBuild.Small);

    [Params(9, 20, 40)]
    public int Runs { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        int amplifiers = (Runs - 1) / 2;
        open = StarBuild.Open(StarBuild.Given(amplifiers, Runs, WholeWatts / amplifiers));
    }

    [Benchmark(Baseline = true)]
    public int Choose()
    {
        CompleteBuild build = BuildCompletion.Complete(open, RulesetLibrary.Newest, WorkBudgets.MeterFor(open));
        SizedBuild sized = Sizer.Size(new Evaluator(build));
        return sized.Evaluation.Violations.Count;
    }

    [Benchmark]
    public int LinearByCpSat()
    {
        var problem = new ChoiceProblem(open);
        return new LinearProblem(problem, problem.Goals[0], 1).SolveOutside()?.Length ?? 0;
    }
}
