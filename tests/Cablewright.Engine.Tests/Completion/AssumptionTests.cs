using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Completion;

/// <summary>Nothing is assumed in silence, and what is assumed is what the ruleset says.</summary>
public class AssumptionTests
{
    [Fact]
    public void With_everything_given_only_the_limit_of_the_drop_is_assumed() =>
        Assert.Equal(["/limits/maxDrop"], Pointers(OneAmplifier()));

    [Theory]
    [InlineData("/vehicle/chargingVoltage")]
    [InlineData("/vehicle/body/returnResistance")]
    [InlineData("/amplifiers/0/efficiency")]
    [InlineData("/amplifiers/0/amplifierClass")]
    [InlineData("/amplifiers/0/powerSupply")]
    [InlineData("/amplifiers/0/programme")]
    [InlineData("/runs/0/route")]
    [InlineData("/runs/0/conductor/material")]
    [InlineData("/runs/0/conductor/insulationRating")]
    [InlineData("/runs/0/jointResistance")]
    [InlineData("/runs/0/fuse/family")]
    [InlineData("/runs/0/fuse/distanceFromSource")]
    [InlineData("/limits/engineBayTemperature")]
    [InlineData("/limits/cabinTemperature")]
    [InlineData("/runs/-")]
    public void What_is_left_out_is_listed(string pointer)
    {
        Assessment answer = Assessed.Of(Bare());
        Contract.Assessments.Assumption assumed = answer.Assumptions.First(assumption => assumption.Pointer == pointer);
        Assert.All([assumed.Value, assumed.Reason, assumed.Source], text => Assert.False(string.IsNullOrWhiteSpace(text)));
    }

    /// <summary>600 W, class D by default from 400 W up, 75 %, at 14.2 V: 800 W and somewhat more than 56.3 A.</summary>
    [Fact]
    public void The_defaults_are_those_that_are_listed()
    {
        Assessment answer = Assessed.Of(Bare());
        Assert.Equal(14.2, answer.Supply.OperatingVolts, 12);
        AmplifierResult bass = answer.Amplifiers[0];
        Near.Relative(800, bass.PeakCurrentAmps * bass.TerminalVolts, 1e-9, "input power, W");
        Assert.Equal(3 * 0.3048, answer.Runs.Single(run => run.Id == "bass-return").LengthMetres, 12);
    }

    /// <summary>
    /// 399 W at 60 %, or 600 W at 75 %; between 400 and 500 W no less than the 666.7 W of 400 W at 60 %, so that more output
    /// never draws less.
    /// </summary>
    [Theory]
    [InlineData(399, 665)]
    [InlineData(400, 666.666666667)]
    [InlineData(500, 666.666666667)]
    [InlineData(600, 800)]
    public void A_small_amplifier_of_unstated_class_is_of_class_AB_and_a_large_one_of_class_D(double output, double input)
    {
        Build build = Bare() with { Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = output }] };
        AmplifierResult bass = Assessed.Of(build).Amplifiers[0];
        Near.Relative(input, bass.PeakCurrentAmps * bass.TerminalVolts, 1e-9, "input power, W");
    }

    /// <summary>
    /// The trade rates input current at 14.4 V: 100 A there are 1440 W, and 24 V systems are rated at twice that.
    /// </summary>
    [Theory]
    [InlineData(14.0, 1440)]
    [InlineData(27.6, 2880)]
    public void A_rated_input_current_stands_for_a_power_at_the_rating_voltage(double chargingVolts, double watts)
    {
        Build build = OneAmplifier() with
        {
            Vehicle = OneAmplifier().Vehicle with { ChargingVolts = chargingVolts },
            Amplifiers =
            [
                new Amplifier
                {
                    Id = "bass",
                    RatedInputAmps = 100,
                    Class = AmplifierClass.D,
                    PowerSupply = PowerSupply.Regulated,
                    Programme = Programme.Sine,
                },
            ],
        };
        AmplifierResult bass = Assessed.Of(build).Amplifiers[0];
        Near.Relative(watts, bass.PeakCurrentAmps * bass.TerminalVolts, 1e-9, "input power, W");
    }

    private static string[] Pointers(Build build) => [.. Assessed.Of(build).Assumptions.Select(assumption => assumption.Pointer)];

    private static Build Bare() => new()
    {
        Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = 600 }],
        Runs =
        [
            new Run
            {
                Id = "main",
                From = "battery",
                To = "bass",
                LengthMetres = 3,
                Conductor = new ConductorWish { Size = ConductorSize.Of("1/0 AWG") },
                Fuse = new FuseWish { RatingAmps = 150 },
            },
        ],
    };
}
