using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: common practice, no source: "a stock charging system carries about 1000 W of output". Taken as an alternator of 120 A
/// in a car that itself draws 750 W (Commission Implementing Decision (EU) 2017/785), that leaves 120 A · 0.8 − 750 W / 14.4 V =
/// 43.9 A.
/// </summary>
public class StockChargingTests
{
    private const string AboveAlternator = "supply.average-above-alternator";

    /// <summary>1000 W / 0.75 / 14.4 V · (1/8 + 2 %) = 13.4 A of 43.9 A; limited music, 1/3 + 2 %: 32.7 A.</summary>
    [Theory]
    [InlineData(AmplifierClass.D, Programme.Dynamic)]
    [InlineData(AmplifierClass.D, Programme.Compressed)]
    [InlineData(AmplifierClass.AB, Programme.Dynamic)]
    public void It_holds_for_music_at_speed(AmplifierClass kind, Programme programme)
    {
        Assessment answer = Play(1000, kind, programme);
        Assert.DoesNotContain(answer.Findings, finding => finding.Code == AboveAlternator);
        Assert.InRange(answer.Supply.AverageCurrentAmps, 13, answer.Supply.AlternatorAvailableAmps!.Value);
        Near.Absolute(43.9, answer.Supply.AlternatorAvailableAmps.Value, 0.05, "left, A");
        SupplyCase atSpeed = answer.Supply.Cases.Single(each => each.Case is SupplyCaseName.AtSpeed);
        Assert.True(atSpeed.AverageBalanceAmps > 0);
        Assert.Null(atSpeed.MinutesToLimit);
    }

    /// <summary>
    /// 43.9 A · 14.4 V · 0.75 = 474 W, "480 W" in the round: a tone of 1000 W takes twice that from the batteries.
    /// </summary>
    [Fact]
    public void It_does_not_hold_for_tones_of_which_it_carries_some_470_watts()
    {
        Assessment answer = Play(1000, AmplifierClass.D, Programme.Sine);
        Assert.Contains(answer.Findings, finding => finding.Code == AboveAlternator);
        Assert.NotNull(answer.Supply.Cases.Single(each => each.Case is SupplyCaseName.AtSpeed).MinutesToLimit);
        Assert.DoesNotContain(Play(460, AmplifierClass.D, Programme.Sine).Findings, finding => finding.Code == AboveAlternator);
        Assert.Contains(Play(480, AmplifierClass.D, Programme.Sine).Findings, finding => finding.Code == AboveAlternator);
    }

    /// <summary>
    /// At idle, 800 · 2.7 = 2160 turns of the shaft, by the curve of a 50/120 A label 123.262 A · √(1 − (1371.05/2160)²) =
    /// 95.25 A cold, 76.2 A hot: 24.1 A above the 52.1 A of the car, enough for music of 13.4 A and not for dense music of
    /// 32.7 A.
    /// </summary>
    [Theory]
    [InlineData(Programme.Dynamic, true)]
    [InlineData(Programme.Compressed, false)]
    public void At_idle_it_holds_for_quiet_music_alone(Programme programme, bool holds)
    {
        Assessment answer = Play(1000, AmplifierClass.D, programme);
        SupplyCase idle = answer.Supply.Cases.Single(each => each.Case is SupplyCaseName.Idle);
        Near.Absolute(24.1, idle.AvailableAmps, 0.1, "left at idle, A");
        Assert.Equal(holds, idle.MinutesToLimit is null);
        Assert.Equal(holds, answer.Findings.All(finding => finding.Code != "supply.average-above-idle"));
    }

    private static Assessment Play(double watts, AmplifierClass kind, Programme programme)
    {
        Build build = OneAmplifier().WithAmplifier(amplifier => amplifier with
        {
            RatedOutputWatts = watts,
            Class = kind,
            Programme = programme,
            Efficiency = null,
        });
        return Assessed.Of(build with
        {
            Vehicle = build.Vehicle with { ChargingVolts = 14.4, Alternator = new Alternator { RatedAmps = 120 } },
        });
    }
}
