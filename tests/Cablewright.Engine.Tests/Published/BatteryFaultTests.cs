using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// What a battery gives into a short circuit. Sources: the test point of SAE J537, 7.2 V at the cold-cranking current; ratings of
/// a truck service manual; resistances and rest voltages as the tables name them.
/// </summary>
public class BatteryFaultTests
{
    /// <summary>
    /// Common practice, no source: a 60 Ah starter battery cranks with 540 A. Cold (12.6 V − 7.2 V)/540 A = 10 mΩ; warm 0.4 of
    /// that (from memory): 12.6 V/4 mΩ = 3150 A at most, 12 V/10 mΩ = 1200 A at least.
    /// </summary>
    [Theory]
    [InlineData(60.0, null)]
    [InlineData(null, 540.0)]
    [InlineData(60.0, 540.0)]
    [InlineData(null, null)]
    public void A_battery_is_the_same_by_its_capacity_and_by_its_cranking_current(double? ampHours, double? cranking)
    {
        (double largest, double smallest) = AtThePost(
            new Battery { Id = "starter", CapacityAmpHours = ampHours, ColdCrankingAmps = cranking });
        Near.Relative(3150, largest, 1e-6, "largest, A");
        Near.Relative(1200, smallest, 1e-6, "smallest, A");
    }

    public static TheoryData<double, double> Ratings()
    {
        var ratings = new TheoryData<double, double>();
        foreach (PublishedRow row in PublishedTable.Read("battery-reserve"))
            ratings.Add(row.Number("cca_a"), row.Number("ah_20h_at_exponent_1.2"));
        return ratings;
    }

    /// <summary>The manual's batteries crank with 6.1 to 10.9 A for each ampere-hour.</summary>
    [Theory]
    [MemberData(nameof(Ratings))]
    public void For_rated_batteries_the_two_ways_are_within_half_of_each_other(double cranking, double ampHours)
    {
        (double byCranking, _) = AtThePost(new Battery { Id = "starter", ColdCrankingAmps = cranking });
        (double byCapacity, _) = AtThePost(new Battery { Id = "starter", CapacityAmpHours = ampHours });
        Assert.InRange(byCapacity / byCranking, 1 / 1.5, 1.5);
    }

    public static TheoryData<string, double, double?, double> Resistances()
    {
        var resistances = new TheoryData<string, double, double?, double>();
        foreach (PublishedRow row in PublishedTable.Read("battery-resistances"))
            resistances.Add(
                row["chemistry"], row.Number("ah"), row["least_mohm"].Length > 0 ? row.Number("least_mohm") / 1000 : null,
                row.Number("most_mohm") / 1000);
        return resistances;
    }

    /// <summary>No battery of its kind gives more than at the least resistance, nor less than at the most.</summary>
    [Theory]
    [MemberData(nameof(Resistances))]
    public void Its_bounds_hold_the_published_resistances(string chemistry, double ampHours, double? least, double most)
    {
        Chemistry kind = Enum.GetValues<Chemistry>().Single(each => each.Word() == chemistry);
        CompleteBattery battery = BatteryOf(new Battery { Id = "starter", Chemistry = kind, CapacityAmpHours = ampHours });
        Assert.True(battery.LeastOhms <= (least ?? most) * 1.001, $"least {battery.LeastOhms} ohm");
        Assert.True(battery.MostOhms >= most * 0.999, $"most {battery.MostOhms} ohm");
        Assert.InRange(battery.InternalOhms, battery.LeastOhms, battery.MostOhms);
    }

    /// <summary>
    /// Full, by the lists of rest voltages: flooded 12.6 V, glass mat and gel 12.85 V (from memory), lithium iron phosphate 13.6
    /// V a day after charging.
    /// </summary>
    [Theory]
    [InlineData(Chemistry.Flooded, 12.6)]
    [InlineData(Chemistry.Agm, 12.85)]
    [InlineData(Chemistry.Gel, 12.85)]
    [InlineData(Chemistry.LiFePo4, 13.6)]
    public void A_full_battery_stands_at_the_voltage_of_its_chemistry(Chemistry chemistry, double volts)
    {
        (double largest, _) = AtThePost(new Battery { Id = "starter", Chemistry = chemistry, InternalOhms = 0.005 });
        Near.Relative(volts / 0.005, largest, 1e-6, "largest, A");
    }

    /// <summary>
    /// The cells of 100 Ah have 1 to 3 mΩ (from memory), so that 4.5 to 13.6 kA flow. An ANL part without a listing breaks
    /// 2.7 kA (inverter manual), a class T fuse 20 kA (maker).
    /// </summary>
    [Theory]
    [InlineData(FuseFamilyName.Anl, true)]
    [InlineData(FuseFamilyName.ClassT, false)]
    public void Behind_lithium_a_fuse_of_low_interrupting_rating_is_questioned(FuseFamilyName family, bool isQuestioned)
    {
        Build build = Proved()
            .WithBattery("starter", _ => new Battery { Id = "starter", Chemistry = Chemistry.LiFePo4, CapacityAmpHours = 100 })
            .WithRun("main", run => run with { Fuse = new FuseWish { RatingAmps = 80, Family = family } });
        Finding[] found = [.. Assessed.Of(build).Findings.Where(each => each.Code == "fuse.interrupting-rating-unknown")];
        Assert.Equal(isQuestioned, found.Length == 1);
        Assert.All(found, finding => Assert.InRange(finding.Measured!.Value, 4500, 13_601));
    }

    /// <summary>
    /// From memory: a floor pan of up to 1 mΩ and a good ground point of up to 0.3 mΩ, where steel sheet alone computes to
    /// 0.35 mΩ. 5 mΩ, 1 m of 1/0 AWG at 105 °C 0.438726 mΩ, joints 0.2 mΩ, strap 0.44 mΩ, and 1.3 mΩ unless a body is stated.
    /// </summary>
    [Theory]
    [InlineData(null, 1.3)]
    [InlineData(0.0002, 0.2)]
    public void The_smallest_fault_goes_over_the_most_that_the_body_may_have(double? stated, double milliohms)
    {
        BuildModel model = ModelOf(Bodied(Wire("main", "starter", "block"), stated));
        double amps = FaultsOf(model).SmallestAt(model.Topology.NodeAt(RunEnd.Far(0)), 0).Amps;
        Near.Relative(12 / (5 + 0.438726 + 0.2 + 0.44 + milliohms) * 1000, amps, 1e-5, "smallest, A");
    }

    /// <summary>The drop and the smallest fault each take the body as it is worse for them, over a foot of its own too.</summary>
    [Fact]
    public void The_drop_does_not()
    {
        BuildModel model = ModelOf(Proved() with { Vehicle = Proved().Vehicle with { BodyReturnOhms = null } });
        Assert.Equal([0.00035], model.Circuit.FixedOhms);
        Assert.Equal([0.0013], model.Circuit.FixedOhmsInFault);
    }

    private static Build Bodied(Run main, double? bodyOhms)
    {
        Build build = Of(main, Fused("feed", "block", "bass"));
        return build with { Vehicle = build.Vehicle with { BodyReturnOhms = bodyOhms } };
    }

    /// <summary>The largest and the smallest fault at the terminals of a battery.</summary>
    private static (double Largest, double Smallest) AtThePost(Battery battery)
    {
        BuildModel model = ModelOf(Bodied(Wire("main", "starter", "block"), 1e-7).WithBattery("starter", _ => battery));
        FaultCurrents faults = FaultsOf(model);
        double strap = model.Build.Ruleset.Supply.StrapResistance.Value + 1e-7;
        double least = faults.SmallestAt(model.Topology.NodeAt(RunEnd.Near(0)), 0).Amps;
        return (faults.LargestAt(model.Topology.NodeAt(RunEnd.Near(0))), 12 / (12 / least - strap));
    }

    private static CompleteBattery BatteryOf(Battery battery) =>
        ModelOf(Of(Fused("main", "starter", "bass")).WithBattery("starter", _ => battery)).Build.Batteries[0];

    private static FaultCurrents FaultsOf(BuildModel model) => new(model, DesignOf(model));
}
