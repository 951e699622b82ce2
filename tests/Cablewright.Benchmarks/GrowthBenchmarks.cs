using BenchmarkDotNet.Attributes;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>How an assessment grows with the number of runs, an amplifier to every eight of them.</summary>
public class GrowthBenchmarks
{
    private const double WholeWatts = 1200;

    private Build given = StarBuild.Small;

    [Params(10, 100, 512)]
    public int Runs { get; set; }

    [GlobalSetup]
    public void Setup() => given = StarBuild.Given(Runs / 8, Runs, WholeWatts / (Runs / 8));

    [Benchmark]
    public Assessment Given() => Assessor.Assess(given, RulesetLibrary.Newest);
}
