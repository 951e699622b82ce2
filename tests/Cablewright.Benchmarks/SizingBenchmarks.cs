using BenchmarkDotNet.Attributes;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;

namespace Cablewright.Benchmarks;

/// <summary>
/// The choice of all conductors and fuses of four amplifiers and nine runs, without words and questions. Another program that
/// makes the same choice stands here beside it.
/// </summary>
public class SizingBenchmarks
{
    private readonly Build open = StarBuild.Open(StarBuild.Small);

    [Benchmark(Baseline = true)]
    public int Choose()
    {
        CompleteBuild build = BuildCompletion.Complete(open, RulesetLibrary.Newest);
        SizedBuild sized = Sizer.Size(build, new Evaluator(build), build.Ruleset["sizing.work-budget"].Value);
        return sized.Evaluation.Breaches.Count;
    }
}
