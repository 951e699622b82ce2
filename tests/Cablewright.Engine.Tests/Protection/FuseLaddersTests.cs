using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>
/// Which families a fuse that is left open may be of. What a battery asks by the table of ABYC E-11.16 (1500, 3000 and 5000 A to
/// 650, 1100 and 2200 A cold cranking, half behind the battery fuse) or by what it lets flow; what each family interrupts, of ISO
/// 8820 scopes, maker data and an inverter manual: a blade 1000 A, the small bolt-in fuse 2000 A (from memory), an ANL 2700 A,
/// the fuse with one bolt 5000 A at 32 V and 2000 A at 58 V, class T 20 kA.
/// </summary>
public class FuseLaddersTests
{
    private static readonly FuseFamilyName[] Usual =
        [FuseFamilyName.BladeC, FuseFamilyName.MiniAnl, FuseFamilyName.Anl, FuseFamilyName.SingleBolt, FuseFamilyName.ClassT];

    /// <summary>
    /// 12.6 V over 4 mΩ are 3150 A: of 700 A cold cranking 3000 A are asked, and 5000 A of 2200 A, which the best of the ANL
    /// break; 7 mΩ let no more than 1800 A flow.
    /// </summary>
    [Theory]
    [InlineData(500, 4, 0)]
    [InlineData(650, 4, 0)]
    [InlineData(700, 7, 1)]
    [InlineData(700, 5, 2)]
    [InlineData(700, 4, 2)]
    [InlineData(2200, 2, 2)]
    [InlineData(3000, 2, 4)]
    public void At_a_battery_what_it_asks_is_interrupted(double cranking, double milliohms, int first) =>
        Assert.Equal(Usual[first..], Names(Battery(Feed(), cranking, milliohms), RunEnd.Near(0)));

    /// <summary>Behind the battery fuse half is asked, 1500 A of 700 A cold cranking: the small bolt-in fuse does.</summary>
    [Theory]
    [InlineData(650, 0)]
    [InlineData(700, 1)]
    [InlineData(1200, 2)]
    public void Behind_the_battery_fuse_half_is_enough(double cranking, int first) =>
        Assert.Equal(Usual[first..], Names(Battery(Behind(null), cranking, 2), RunEnd.Near(1)));

    /// <summary>
    /// 100 Ah of lithium iron phosphate behind 1 mΩ let more than 13 kA flow: class T. At 0.5 mΩ nothing interrupts enough, and
    /// of all class T interrupts the most.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.5)]
    public void Behind_lithium_iron_phosphate_it_is_class_T(double milliohms) =>
        Assert.Equal([FuseFamilyName.ClassT], Names(Lithium(Feed(), milliohms), RunEnd.Near(0)));

    /// <summary>
    /// 10 m of 8 AWG have 2.06 mΩ a metre (NEC chapter 9 table 8: 2.55 at 75 °C, 2.1 at 20 °C): 13.4 V over 22 mΩ let 600 A flow,
    /// which all interrupt. What is still open may be of any size, so that there class T is asked for.
    /// </summary>
    [Theory]
    [InlineData("8 AWG", 0)]
    [InlineData(null, 4)]
    public void A_given_conductor_limits_what_flows_behind_it(string? size, int first) =>
        Assert.Equal(Usual[first..], Names(Lithium(Behind(size), 1), RunEnd.Near(1)));

    /// <summary>At 28 V parts for 32 V serve; a 48 V system reaches 64 V (ISO 16750-2), more than parts for 58 V bear.</summary>
    [Theory]
    [InlineData(28, 0)]
    [InlineData(56, 4)]
    public void It_is_rated_for_the_voltage(double volts, int first)
    {
        Build build = Battery(Feed(), 500, 20);
        Assert.Equal(
            Usual[first..], Names(build with { Vehicle = build.Vehicle with { ChargingVolts = volts } }, RunEnd.Near(0)));
    }

    /// <summary>What the part itself is rated for counts before its family.</summary>
    [Fact]
    public void A_stated_interrupting_rating_counts()
    {
        Build build = Battery(Feed(), 3000, 2)
            .WithRun("main", run => run with { Fuse = new FuseWish { InterruptingRatingAmps = 10_000 } });
        Assert.Equal(Usual, Names(build, RunEnd.Near(0)));
    }

    [Fact]
    public void Named_families_alone_are_chosen_from_in_the_order_of_the_ruleset()
    {
        Build build = Battery(Feed(), 500, 4);
        Assert.Equal(
            [FuseFamilyName.BladeC, FuseFamilyName.StripSf51, FuseFamilyName.ClassT],
            Names(Naming(build, FuseFamilyName.ClassT, FuseFamilyName.StripSf51, FuseFamilyName.BladeC), RunEnd.Near(0)));
    }

    /// <summary>Of families that all interrupt too little the one that interrupts most, and a finding names it.</summary>
    [Fact]
    public void Of_named_families_that_do_not_serve_the_best_is_left() => Assert.Equal(
        [FuseFamilyName.Anl],
        Names(Naming(Battery(Feed(), 700, 2), FuseFamilyName.BladeC, FuseFamilyName.Anl), RunEnd.Near(0)));

    [Fact]
    public void A_stated_family_is_alone()
    {
        Build build = Naming(Lithium(Feed(), 1), FuseFamilyName.Anl)
            .WithRun("main", run => run with { Fuse = new FuseWish { Family = FuseFamilyName.BladeE } });
        Assert.Equal([FuseFamilyName.BladeE], Names(build, RunEnd.Near(0)));
    }

    /// <summary>What lies between two currents and two ampacities comes to a family that lies between.</summary>
    [Theory]
    [InlineData(25)]
    [InlineData(110)]
    public void No_family_is_met_that_does_not_lie_between(double celsius)
    {
        FuseFamilies families = RulesetLibrary.Newest.FuseFamilies;
        double[] grid = [0, 5, 22.5, 22.6, 29, 30, 34, 60, 80, 81, 110, 300, 600, 900, double.PositiveInfinity];
        foreach (FuseFamily[] of in new FuseFamily[][]
        {
            [.. families.InOrderOfChoice], [.. families.InOrderOfChoice.Where(family => family.Choice.IsUsual)],
        })
        {
            var ladder = new FuseLadder(of, family => RulesetLibrary.Newest.Fuse.ChosenUpTo(family.Name), celsius);
            foreach ((double full, double ampacity) in grid.SelectMany(_ => grid, (full, ampacity) => (full, ampacity)))
            {
                foreach ((double less, double thinner) in grid.SelectMany(_ => grid, (less, thinner) => (less, thinner))
                    .Where(least => least.less <= full && least.thinner <= ampacity))
                {
                    Assert.Contains(ladder.For(full, ampacity), ladder.Between((less, thinner), (full, ampacity)));
                    Assert.Contains(ladder.For(less, thinner), ladder.Between((less, thinner), (full, ampacity)));
                    Assert.Contains(ladder.For(less, ampacity), ladder.Between((less, thinner), (full, ampacity)));
                }
            }
        }
    }

    private static Build Feed() => Of(Open("main", "starter", "bass", null));

    private static Build Behind(string? size) => Of(Open("main", "starter", "block", size), Open("feed", "block", "bass", null));

    private static Run Open(string id, string from, string to, string? size)
    {
        Run run = Wire(id, from, to, size ?? "8 AWG") with { LengthMetres = 10 };
        return size is null ? run with { Conductor = run.Conductor with { Size = null } } : run;
    }

    private static Build Battery(Build build, double cranking, double milliohms) => build.WithBattery(
        "starter", battery => battery with { ColdCrankingAmps = cranking, InternalOhms = milliohms / 1000 });

    private static Build Lithium(Build build, double milliohms) => build.WithBattery(
        "starter", battery => battery with { Chemistry = Chemistry.LiFePo4, InternalOhms = milliohms / 1000 });

    private static Build Naming(Build build, params FuseFamilyName[] families) =>
        build with { Sizing = build.Sizing with { FuseFamilies = families } };

    private static IEnumerable<FuseFamilyName> Names(Build build, RunEnd end) =>
        new FuseLadders(ModelOf(build)).At(end).Families.Select(family => family.Name);
}
