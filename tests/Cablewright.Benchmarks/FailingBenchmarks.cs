using BenchmarkDotNet.Attributes;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>Builds that fail, so that the changes are worked out which make them feasible.</summary>
public class FailingBenchmarks
{
    private readonly Build given = StarBuild.WithThinMain(StarBuild.Small);
    private readonly Build several = StarBuild.WithThinMain(Longer(StarBuild.Small));
    private readonly Build open = Limited(StarBuild.Open(StarBuild.Small));
    private readonly Build hundred = StarBuild.WithThinMain(StarBuild.Given(12, 100, 100));
    private readonly Build largest = StarBuild.WithThinMain(StarBuild.Given(64, 512, 20));

    [Benchmark]
    public Assessment OneOfNineRunsTooThin() => Assessor.Assess(given, RulesetLibrary.Newest);

    [Benchmark]
    public Assessment AllOfNineRunsTooLong() => Assessor.Assess(several, RulesetLibrary.Newest);

    [Benchmark]
    public Assessment NineOpenRunsTooLong() => Assessor.Assess(open, RulesetLibrary.Newest);

    [Benchmark]
    public Assessment OneOfHundredRunsTooThin() => Assessor.Assess(hundred, RulesetLibrary.Newest);

    [Benchmark]
    public Assessment OneOfAllRunsTooThin() => Assessor.Assess(largest, RulesetLibrary.Newest);

    private static Build Longer(Build build) => build with
    {
        Runs = [.. build.Runs.Select(run => run with { LengthMetres = 4 * run.LengthMetres })],
    };

    private static Build Limited(Build build) => build with { Limits = build.Limits with { MaxDropVolts = 0.1 } };
}
