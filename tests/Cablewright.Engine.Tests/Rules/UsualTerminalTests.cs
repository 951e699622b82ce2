using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Rules;

/// <summary>
/// Common practice, no source: an amplifier's terminals take 1/0 AWG, those of one below 500 W 4 AWG; a larger feed ends at a
/// reducer or a distribution block before them.
/// </summary>
public class UsualTerminalTests
{
    private const string Pointer = "/amplifiers/0/largestConductor";

    [Theory]
    [InlineData(1000, "1/0 AWG", null)]
    [InlineData(1000, "2/0 AWG", "1/0 AWG")]
    [InlineData(500, "1/0 AWG", null)]
    [InlineData(499, "4 AWG", null)]
    [InlineData(499, "2 AWG", "4 AWG")]
    public void A_larger_feed_is_named_with_a_reducer_and_what_is_assumed_is_listed(double watts, string size, string? usual)
    {
        Assessment answer = Assessed.Of(Feeding(watts, size, null));
        Finding? finding = answer.Findings.FirstOrDefault(each => each.Code == "run.larger-than-terminal");
        Assert.Equal(usual, answer.Assumptions.SingleOrDefault(each => each.Pointer == Pointer)?.Value);
        Assert.Equal(usual is null, finding is null);
        if (finding is null) return;
        Assert.Equal((Severity.Info, Pointer), (finding.Severity, finding.Pointer));
        Assert.Contains("reducer", finding.Remedy, StringComparison.Ordinal);
        Assert.Contains("usually", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>What is stated counts in its place, and for more.</summary>
    [Theory]
    [InlineData("4/0 AWG", false)]
    [InlineData("1/0 AWG", true)]
    public void What_is_stated_of_a_terminal_decides(string largest, bool fails)
    {
        Assessment answer = Assessed.Of(Feeding(1000, "2/0 AWG", largest));
        Assert.DoesNotContain(answer.Assumptions, each => each.Pointer == Pointer);
        Assert.Equal(fails, answer.Findings.Any(each => each is { Code: "run.larger-than-terminal", Severity: Severity.Fail }));
    }

    /// <summary>The same build with its feed left open gets the same conductor, whatever is usual.</summary>
    [Fact]
    public void What_is_usual_bars_no_choice()
    {
        Build open = Feeding(400, "4 AWG", null).WithRun("main", run => run with
        {
            LengthMetres = 20,
            Conductor = run.Conductor with { Size = null },
        });
        Build stated = open.WithAmplifier(amplifier => amplifier with { LargestConductor = Size("4/0 AWG") });
        Assert.Equal(Assessed.Of(stated).Runs[0].Conductor.Size, Assessed.Of(open).Runs[0].Conductor.Size);
        Assert.Contains(Assessed.Of(open).Assumptions, each => each.Pointer == Pointer);
    }

    private static Build Feeding(double watts, string size, string? largest) => OneAmplifier()
        .WithAmplifier(amplifier => amplifier with
        {
            RatedOutputWatts = watts,
            LargestConductor = largest is null ? null : Size(largest),
        })
        .WithRun("main", run => run.Sized(size)).WithRun("return", run => run.Sized("4 AWG"));

    private static ConductorSize Size(string label) => ConductorSize.Of(label);
}
