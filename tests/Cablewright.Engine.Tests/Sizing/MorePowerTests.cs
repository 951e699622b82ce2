using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>What one amplifier on one run gets, over its output: the sizes of the trade's charts, common practice, no
/// source.</summary>
public class MorePowerTests
{
    private const double MetresPerFoot = 0.3048;
    private const double MostWatts = 3000;
    private const double StepWatts = 25;

    public static TheoryData<double, double> Places()
    {
        var places = new TheoryData<double, double>();
        foreach (double feet in new[] { 5.0, 10, 17, 25 })
        {
            foreach (double celsius in new[] { 25.0, 40, 50 }) places.Add(feet, celsius);
        }

        return places;
    }

    /// <summary>With everything else as it is, more power never gets less copper nor a smaller fuse.</summary>
    [Theory]
    [MemberData(nameof(Places))]
    public void More_power_never_gets_less(double feet, double celsius)
    {
        double copper = 0, fuse = 0;
        for (double watts = 2 * StepWatts; watts <= MostWatts; watts += StepWatts)
        {
            Design chosen = Chosen(Bare(watts, feet) with { Limits = new Limits { CabinCelsius = celsius } }).Design;
            double area = chosen.Conductors[0].Count * chosen.Conductors[0].Conductor.Size.MetalAreaMm2;
            double rating = chosen.Near[0]!.TotalRatingAmps(chosen.Conductors[0].Count);
            Assert.False(Significant.Exceeds(copper, area), $"{watts} W: {area} mm2 after {copper} mm2");
            Assert.False(Significant.Exceeds(fuse, rating), $"{watts} W: {rating} A after {fuse} A");
            (copper, fuse) = (area, rating);
        }
    }

    /// <summary>
    /// A bare request of 17 ft: the charts of kits, which go by output and length; the ground is the same cable; a fuse of at
    /// most 1.6 times full draw. Common practice, no source.
    /// </summary>
    [Theory]
    [InlineData(150, "8 AWG", "10 AWG")]
    [InlineData(300, "8 AWG", "4 AWG")]
    [InlineData(500, "4 AWG")]
    [InlineData(750, "4 AWG", "2 AWG")]
    [InlineData(1000, "4 AWG", "2 AWG", "1/0 AWG")]
    [InlineData(1500, "1/0 AWG")]
    [InlineData(2000, "1/0 AWG", "2 x 1/0 AWG")]
    [InlineData(3000, "2 x 1/0 AWG")]
    public void A_bare_request_gets_what_a_shop_would_sell(double watts, params string[] accepted)
    {
        DesignEvaluation evaluation = Chosen(Bare(watts, 17));
        ConductorChoice main = evaluation.Design.Conductors[0];
        Assert.Contains((main.Count > 1 ? $"{main.Count} x " : "") + main.Conductor.Size.Label, accepted);
        Assert.Equal(main, evaluation.Design.Conductors[1]);
        FittedFuse fuse = evaluation.Design.Near[0]!;
        double full = evaluation.Envelope.PeakAmps[0];
        Assert.InRange(fuse.TotalRatingAmps(main.Count), full, 1.6 * full);
    }

    private static DesignEvaluation Chosen(Build build) => Sizer.Size(new Evaluator(
        BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)))).Evaluation;

    private static Build Bare(double watts, double feet) => new()
    {
        Units = UnitSystem.Us,
        Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = watts }],
        Runs = [new Run { Id = "main", From = "battery", To = "bass", LengthMetres = feet * MetresPerFoot }],
    };
}
