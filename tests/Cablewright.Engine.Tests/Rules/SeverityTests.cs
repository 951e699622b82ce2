using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Rules;

/// <summary>How much a finding weighs hangs on how far the limit is passed, and on how well the figure is known.</summary>
public class SeverityTests
{
    /// <summary>
    /// 6 AWG bears 111.71 A in 40 °C: 125 A is the next standard rating of an ANL, and half as much again is 167.6 A.
    /// </summary>
    [Theory]
    [InlineData(125, Severity.Info)]
    [InlineData(130, Severity.Caution)]
    [InlineData(150, Severity.Caution)]
    [InlineData(175, Severity.Fail)]
    public void A_fuse_above_the_ampacity(double fuse, Severity severity) =>
        Assert.Equal(severity, SeverityOf("fuse.above-conductor-rating", Fused(40, Anl(fuse))));

    /// <summary>An ANL of 100 A carries 80 A without end.</summary>
    [Theory]
    [InlineData(80.1, Severity.Caution)]
    [InlineData(99.9, Severity.Caution)]
    [InlineData(100.1, Severity.Fail)]
    public void A_fuse_below_the_load(double load, Severity severity) =>
        Assert.Equal(severity, SeverityOf("fuse.below-load", Fused(load, Anl(100))));

    /// <summary>
    /// An ANL is recalled to hold 2/3 s, a third of a note, at 2 · 1.5^(ln 1.75/ln(1/0.3)) = 2.41473 times its 40 A: 96.589 A.
    /// </summary>
    [Theory]
    [InlineData(96.5, Severity.Info)]
    [InlineData(96.7, Severity.Caution)]
    public void A_fuse_that_opens_on_a_note(double load, Severity severity) =>
        Assert.Equal(severity, SeverityOf("fuse.opens-at-full-output", Fused(load, Anl(40))));

    /// <summary>
    /// A bolted strip of 40 A is recalled to open from 1.5 times its rating, 60 A, and no fuse is certain below 1.35 times, 54 A:
    /// 12 V over 5 + 0.4 + 0.1/40 and there and back 12 AWG of 7.0905 mΩ/m: 55.1 A over 14.8 m, 53.0 A over 15.4 m.
    /// </summary>
    [Theory]
    [InlineData(14.8, Severity.Caution)]
    [InlineData(15.4, Severity.Fail)]
    public void A_fuse_that_may_not_open(double metres, Severity severity) => Assert.Equal(
        severity,
        SeverityOf("fuse.may-not-open", Shorted(metres, "12 AWG", Anl(40) with { Family = FuseFamilyName.StripSf30 })));

    /// <summary>
    /// Beyond 6 times its rating a 130 A ANL is recalled to let through 780² A²s; k = 135.90 from 40 °C: 10 AWG takes
    /// (135.90 · 5.2612)² A²s, 1.19 times less, and 14 AWG (135.90 · 2.0809)² A²s, 7.6 times less; a factor of 3 may be
    /// misremembered.
    /// </summary>
    [Theory]
    [InlineData("10 AWG", 0.9, Severity.Caution)]
    [InlineData("14 AWG", 0.3, Severity.Fail)]
    public void A_fuse_that_opens_too_late_by_a_recalled_band(string size, double metres, Severity severity) =>
        Assert.Equal(severity, SeverityOf("fuse.opens-too-late", Shorted(metres, size, Anl(130))));

    /// <summary>
    /// A blade is known to interrupt 1000 A, less than the 1500 A that ABYC E-11 asks for; vehicle makers fit it all the same
    /// behind up to 650 A cold cranking.
    /// </summary>
    [Theory]
    [InlineData(650, Severity.Info)]
    [InlineData(651, Severity.Caution)]
    public void A_plug_in_fuse_at_a_battery(double crankingAmps, Severity severity) => Assert.Equal(
        severity,
        SeverityOf(
            "fuse.interrupting-rating-unknown",
            Fused(20, Anl(40) with { Family = FuseFamilyName.BladeC })
                .WithBattery("starter", battery => battery with { ColdCrankingAmps = crankingAmps })));

    /// <summary>Over 22 m the golden case loses a good 5 % in its conductors, and nothing else is wrong with it.</summary>
    [Fact]
    public void What_is_lost_on_the_way_is_no_matter_of_safety()
    {
        Assessment answer = Assessed.Of(OneAmplifier().WithRun("main", run => run with { LengthMetres = 22 }));
        Assert.Equal(Verdict.Caution, answer.Verdict);
        Assert.Equal(Verdict.Caution, answer.Verdicts.Performance);
        Assert.Equal(Verdict.Pass, answer.Verdicts.Safety);
        Assert.All(answer.Findings, finding => Assert.Equal(Concern.Performance, finding.Concern));
    }

    private static Severity SeverityOf(string code, Build build) =>
        Assessed.Of(build).Findings.First(finding => finding.Code == code).Severity;

    private static Build Fused(double load, FuseWish fuse) =>
        ConstantCurrent(load).WithRun("main", run => run with { Fuse = fuse });

    private static Build Shorted(double metres, string size, FuseWish fuse) => ConstantCurrent(1) with
    {
        Runs =
        [
            Run("main", "starter", "bass", metres, size) with { Fuse = fuse },
            Run("return", "bass", "starter", metres, size),
        ],
    };
}
