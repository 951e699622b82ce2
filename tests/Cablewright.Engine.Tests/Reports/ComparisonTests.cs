using Cablewright.Contract.Comparisons;
using Cablewright.Engine.Builds;
using Cablewright.Reports.Assessments;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Reports;

public class ComparisonTests
{
    [Fact]
    public void A_build_does_not_differ_from_itself() => Assert.Empty(Of(OneAmplifier(), OneAmplifier()).Differences);

    [Fact]
    public void What_differs_is_said_run_by_run()
    {
        Comparison comparison = Of(OneAmplifier(), OneAmplifier().WithRun("main", run => run.Sized("4 AWG")));
        Difference conductor = comparison.Differences.Single(difference => difference.What == "conductor");
        Assert.Equal(("run", "main"), (conductor.Subject, conductor.Id));
        Assert.Equal(["1/0 AWG copper", "4 AWG copper"], conductor.Values);
        Assert.Contains(comparison.Differences, difference => difference is { Subject: "amplifier", What: "dropPercent" });
        Assert.DoesNotContain(comparison.Differences, difference => difference is { Id: "strap", What: "conductor" });
        Assert.True(comparison.Builds[1].WorstDropPercent > comparison.Builds[0].WorstDropPercent);
        Assert.True(comparison.Builds[1].ConductorGrams < comparison.Builds[0].ConductorGrams);
    }

    [Fact]
    public void What_one_build_lacks_has_no_value_there()
    {
        Build without = OneAmplifier().WithRun("main", run => run with { Fuse = NoFuse });
        Comparison comparison = Of(OneAmplifier(), without);
        Assert.Equal(["150 A ANL", ""], comparison.Differences.Single(difference => difference.What == "fuse").Values);
        Assert.Equal(
            ["0", "1"], comparison.Differences.Single(difference => difference.Id == "fuse.missing-at-battery").Values);
        Assert.Equal([0, 1], comparison.Builds.Select(build => build.Fails));
    }

    private static Comparison Of(params Build[] builds) =>
        ComparisonWriter.Of([.. builds.Select(Assessed.Of)], new string?[builds.Length]);
}
