using Cablewright.Engine.Builds;
using Cablewright.Engine.DesignRules;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.DesignRules;

/// <summary>
/// How much it weighs that more enters a run than it may carry, in 30 °C, where ampacities are those of 33 CFR 183.425 table 5.
/// ABYC E-11 11.10.2.3 allows the next standard rating above the ampacity, and never more than 1.5 times it.
/// </summary>
public class SeverityOfEnteringTests
{
    /// <summary>
    /// 6 AWG bears 120 A: the next ANL is 125 A, 1.5 times are 180 A. 8 AWG bears 80 A, which an ANL is made in: nothing above is
    /// the next rating; 1.5 times are 120 A. 18 AWG bears 20 A: the next ANL, 35 A, is beyond 1.5 times, 30 A.
    /// </summary>
    [Theory]
    [InlineData("6 AWG", 121, Severity.Info)]
    [InlineData("6 AWG", 125, Severity.Info)]
    [InlineData("6 AWG", 125.1, Severity.Caution)]
    [InlineData("6 AWG", 180, Severity.Caution)]
    [InlineData("6 AWG", 180.1, Severity.Fail)]
    [InlineData("8 AWG", 80.1, Severity.Caution)]
    [InlineData("8 AWG", 120, Severity.Caution)]
    [InlineData("8 AWG", 120.1, Severity.Fail)]
    [InlineData("18 AWG", 30, Severity.Info)]
    [InlineData("18 AWG", 30.1, Severity.Fail)]
    public void Up_to_the_next_rating_it_is_worth_knowing_and_to_half_as_much_again_a_caution(
        string size, double entering, Severity severity) =>
        Assert.Equal(severity, Of(Fused("main", "starter", "bass", 100, size), entering));

    /// <summary>14 AWG bears 35 A: of blades the next is 35 A itself, of class T 60 A, beyond 1.5 times, 52.5 A.</summary>
    [Theory]
    [InlineData(FuseFamilyName.BladeC, 40, Severity.Caution)]
    [InlineData(FuseFamilyName.ClassT, 52.5, Severity.Info)]
    [InlineData(FuseFamilyName.ClassT, 52.6, Severity.Fail)]
    public void The_ratings_are_those_of_the_family_that_stands_there(
        FuseFamilyName family, double entering, Severity severity) =>
        Assert.Equal(severity, Of(
            Wire("main", "starter", "bass", "14 AWG") with { Fuse = new FuseWish { RatingAmps = 30, Family = family } },
                entering));

    /// <summary>
    /// Where none stands, of a blade if blades are made in what enters, else of an ANL. 16 AWG bears 25 A, which blades are made
    /// in; 12 AWG bears 45 A: the next ANL is 50 A, 1.5 times are 67.5 A.
    /// </summary>
    [Theory]
    [InlineData("16 AWG", 30, Severity.Caution)]
    [InlineData("12 AWG", 50, Severity.Info)]
    [InlineData("12 AWG", 60, Severity.Caution)]
    [InlineData("12 AWG", 80, Severity.Fail)]
    public void Without_a_fuse_they_are_those_of_the_usual_family(string size, double entering, Severity severity) =>
        Assert.Equal(severity, Of(Wire("main", "starter", "bass", size), entering));

    /// <summary>Two conductors of 120 A with a fuse each: 250 A and 360 A are 125 A and 180 A for each.</summary>
    [Theory]
    [InlineData(250, Severity.Info)]
    [InlineData(250.2, Severity.Caution)]
    [InlineData(360, Severity.Caution)]
    [InlineData(360.2, Severity.Fail)]
    public void With_a_fuse_for_each_conductor_each_counts_alone(double entering, Severity severity)
    {
        FuseWish wish = Anl(130) with { PerConductor = true };
        Assert.Equal(severity, Of(Wire("main", "starter", "bass", "6 AWG").Times(2) with { Fuse = wish }, entering));
    }

    private static Severity Of(Run run, double entering)
    {
        Build build = Protection.Drawn.Of(run);
        BuildModel model = ModelOf(build with { Limits = build.Limits with { CabinCelsius = 30 } });
        Design design = DesignOf(model);
        var facts = new DesignFacts(
            model, design, EnvelopeOf(model, 30, _ => (0, 0)), new ProtectionMap(model.Topology, design),
            new OperatingPointSolver(model));
        return facts.SeverityOfEntering(RunEnd.Near(0), entering);
    }
}
