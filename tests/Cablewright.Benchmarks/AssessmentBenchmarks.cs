using BenchmarkDotNet.Attributes;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>One whole assessment of four amplifiers and nine runs.</summary>
public class AssessmentBenchmarks
{
    private readonly Build given = StarBuild.Small;
    private readonly Build open = StarBuild.Open(StarBuild.Small);

    [Benchmark]
    public Assessment Given() => Assessor.Assess(given, RulesetLibrary.Newest);

    [Benchmark]
    public Assessment Open() => Assessor.Assess(open, RulesetLibrary.Newest);
}
