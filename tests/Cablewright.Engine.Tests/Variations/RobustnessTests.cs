using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Variations;

/// <summary>
/// A load of constant current drops more only by longer or hotter conductors: 60 A over 1 m of 6 AWG each way, 1.3 mohm/m. Limits
/// are for the conductors alone, so five percent more length are 5 % more drop.
/// </summary>
public class RobustnessTests
{
    private static readonly Build Plain = ConstantCurrent(60);

    private static readonly double Drop = Assessed.Of(Plain).Amplifiers[0].ConductorDropVolts;

    [Fact]
    public void A_verdict_with_room_stays()
    {
        Robustness robustness = Of(Plain, new Tolerances());
        Assert.Equal(Assessed.Of(Plain).Verdict, robustness.VerdictAcrossTolerances);
        Assert.Null(robustness.TippedBy);
        Assert.Null(robustness.TipsInto);
    }

    [Fact]
    public void Longer_runs_tip_a_drop_that_is_just_kept()
    {
        Robustness robustness = Of(WithLimit(1.02), new Tolerances { LengthShare = 0.05, SurroundingsKelvin = 0 });
        Assert.Equal(Verdict.Fail, robustness.VerdictAcrossTolerances);
        Assert.Equal("lengths 5 % longer", robustness.TippedBy);
        Assert.Equal("amplifier.drop-over-limit", robustness.TipsInto);
    }

    /// <summary>20 K are 7 % more resistance of copper that is at 60 C: 0.00393 · 20 / (1 + 0.00393 · 40).</summary>
    [Fact]
    public void Hotter_surroundings_tip_it_too()
    {
        Robustness robustness = Of(WithLimit(1.02), new Tolerances { LengthShare = 0, SurroundingsKelvin = 20 });
        Assert.Equal("surroundings 36 F (20 K) hotter", robustness.TippedBy);
    }

    /// <summary>4 % of length and 3.4 % of heat: 1.04 · 1.034 = 1.075.</summary>
    [Fact]
    public void Where_each_alone_keeps_it_both_are_named()
    {
        Robustness robustness = Of(WithLimit(1.06), new Tolerances { LengthShare = 0.04, SurroundingsKelvin = 10 });
        Assert.Equal("lengths 4 % longer and surroundings 18 F (10 K) hotter", robustness.TippedBy);
    }

    [Fact]
    public void The_tolerances_that_are_taken_are_listed()
    {
        Assessment answer =
            Assessed.Of(Plain with { Include = [Extra.Robustness], Tolerances = new Tolerances { LengthShare = 0.1 } });
        Assert.Equal(
            ["/tolerances/efficiency", "/tolerances/chargingVoltage", "/tolerances/surroundings"],
            answer.Assumptions.Select(assumption => assumption.Pointer)
                .Where(pointer => pointer.StartsWith("/tolerances", StringComparison.Ordinal)));
    }

    private static Build WithLimit(double timesTheDrop) =>
        Plain with { Limits = Plain.Limits with { MaxDropVolts = timesTheDrop * Drop } };

    private static Robustness Of(Build build, Tolerances tolerances) =>
        Assessed.Of(build with { Include = [Extra.Robustness], Tolerances = tolerances }).Robustness!;
}
