using Cablewright.Engine.Builds;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Loads;

public class ProgrammeSharesTests
{
    /// <summary>
    /// Source: 16 CFR 432.3 and IEC 62368-1 annex E (1/8 power), amplifier makers' 1/3-power practice; a full sine is 3.01 dB.
    /// </summary>
    [Theory]
    [InlineData(3.0103, 1)]
    [InlineData(7.7815, 1.0 / 3)]
    [InlineData(12.0412, 0.125)]
    [InlineData(0, 1)]
    public void A_crest_factor_is_a_share_of_rated_power(double decibels, double share) =>
        Near.Relative(share, ProgrammeShares.OutputShare(decibels), 1e-4, $"{decibels} dB");

    /// <summary>
    /// Source: a textbook of electronic devices and circuit theory, equation 12.29: a class B stage has an efficiency of
    /// π/4 times its share of full swing: 0.7854 at full output, 0.4534 at a third of it, 0.2777 at an eighth.
    /// </summary>
    [Theory]
    [InlineData(1, 0.7854)]
    [InlineData(0.5, 0.5554)]
    [InlineData(1.0 / 3, 0.4534)]
    [InlineData(0.125, 0.2777)]
    public void A_linear_stage_loses_efficiency_as_theory_says(double outputShare, double efficiency)
    {
        double current = ProgrammeShares.Average(AmplifierClass.B, outputShare, 0, RulesetLibrary.Newest);
        Near.Relative(efficiency, Math.PI / 4 * outputShare / current, 2e-4, $"share {outputShare}");
    }

    /// <summary>
    /// Source: measurements of a touring amplifier by its maker, 4 Ω: 0.6944 efficient at 1/3 power and 0.5474 at 1/8, so that
    /// the draw falls from the one to the other by (1/8)/0.5474 : (1/3)/0.6944 = 0.4757 (class B: 0.6124); from memory, 0.39 of
    /// the full draw at 1/3.
    /// </summary>
    [Fact]
    public void Class_H_draws_as_measured()
    {
        double third = ProgrammeShares.Average(AmplifierClass.H, 1.0 / 3, 0, RulesetLibrary.Newest);
        double eighth = ProgrammeShares.Average(AmplifierClass.H, 1.0 / 8, 0, RulesetLibrary.Newest);
        Near.Relative(0.125 / 0.5474 / (1 / (3 * 0.6944)), eighth / third, 0.03, "an eighth against a third");
        Near.Relative(0.39, third, 0.1, "a third");
        Assert.Equal(1, ProgrammeShares.Average(AmplifierClass.H, 1, 0, RulesetLibrary.Newest));
    }

    /// <summary>
    /// Trade laboratory: a switching amplifier of 1 kW idles at 1.5 A, others at 1 to 2 A, whatever they are rated for: of 100 W
    /// and of 2000 W at 0.75 and 14.4 V, 9.26 and 185.2 A, the average on an eighth is 1.5 A and an eighth of that.
    /// </summary>
    [Theory]
    [InlineData(100, 9.2593)]
    [InlineData(2000, 185.19)]
    public void A_switching_amplifier_idles_at_the_same_current_whatever_its_rating(double watts, double fullAmps)
    {
        Build build = SampleBuilds.OneAmplifier().WithAmplifier(amplifier => amplifier with
        {
            RatedOutputWatts = watts,
            Efficiency = 0.75,
            Programme = Programme.Dynamic,
        });
        AmplifierDraw draw = Protection.Drawn.ModelOf(build).Build.Draws[0];
        Near.Relative(1.5 + fullAmps / 8, draw.AverageShare * fullAmps, 1e-4, "on average, A");
        Near.Relative(Math.Sqrt(3) * (1.5 + fullAmps / 8), draw.ThermalShare * fullAmps, 1e-4, "for heat, A");
    }

    /// <summary>
    /// Sources, both integrated here: a switching stage draws x² of a Gaussian amplitude; the supply of a linear one smooths its
    /// |x| into a rectified sine.
    /// </summary>
    [Fact]
    public void Form_factors_are_those_of_their_waveforms()
    {
        double second = 0, fourth = 0, mean = 0, square = 0;
        const double Step = 1e-3;
        for (double x = Step / 2; x < 10; x += Step)
        {
            double density = 2 * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI) * Step;
            second += density * x * x;
            fourth += density * x * x * x * x;
        }

        for (double angle = Step / 2; angle < Math.PI; angle += Step)
        {
            mean += Math.Sin(angle) * Step / Math.PI;
            square += Math.Sin(angle) * Math.Sin(angle) * Step / Math.PI;
        }

        LoadSection figures = RulesetLibrary.Newest.Load;
        Near.Relative(Math.Sqrt(square) / mean, figures.FormFactor(AmplifierClass.AB).Value, 1e-3, "linear");
        Near.Relative(Math.Sqrt(fourth) / second, figures.FormFactor(AmplifierClass.D).Value, 1e-6, "switching");
    }

    /// <summary>
    /// An eighth of full power: a switching stage that idles at 2 % draws (0.02 + 0.125) · √3 = 0.2511 of its full current as
    /// far as heat goes, a linear one √0.125 · π/√8 = 0.3927, one of class H 0.19 · π/√8 = 0.2110; class A draws all of
    /// it always.
    /// </summary>
    [Theory]
    [InlineData(AmplifierClass.D, 0.2511)]
    [InlineData(AmplifierClass.AB, 0.3927)]
    [InlineData(AmplifierClass.B, 0.3927)]
    [InlineData(AmplifierClass.H, 0.2110)]
    [InlineData(AmplifierClass.A, 1)]
    public void Heat_goes_by_the_root_mean_square_current(AmplifierClass kind, double share) =>
        Near.Relative(share, ProgrammeShares.Thermal(kind, 0.125, 0.02, RulesetLibrary.Newest), 2e-4, kind.Word());

    [Fact]
    public void No_programme_heats_more_than_a_full_sine() =>
        Assert.All(Enum.GetValues<AmplifierClass>(), kind =>
        {
            Assert.Equal(1, ProgrammeShares.Thermal(kind, 1, 0.02, RulesetLibrary.Newest));
            for (double share = 0; share <= 1; share += 0.01)
                Assert.InRange(
                    ProgrammeShares.Thermal(kind, share, 0.02, RulesetLibrary.Newest),
                    ProgrammeShares.Average(kind, share, 0.02, RulesetLibrary.Newest),
                    1);
        });
}
