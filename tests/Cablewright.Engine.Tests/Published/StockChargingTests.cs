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
    /// At idle 0.42 of 120 A, 50.4 A, which is 1.7 A short of the 52.1 A that the car itself takes; by the hot factor as well,
    /// 40.3 A, it would be 11.8 A short.
    /// </summary>
    [Fact]
    public void It_does_not_hold_at_idle_where_the_car_alone_takes_more_than_is_given()
    {
        Assessment answer = Play(1000, AmplifierClass.D, Programme.Dynamic);
        SupplyCase idle = answer.Supply.Cases.Single(each => each.Case is SupplyCaseName.Idle);
        Assert.InRange(idle.AvailableAmps, -12, -1.6);
        Assert.Equal(0, answer.Supply.IdleAvailableAmps);
        Assert.NotNull(idle.MinutesToLimit);
        Assert.Contains(answer.Findings, finding => finding.Code == "supply.average-above-idle");
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
