using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Tests.Supply;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Source: the formula and the figures of a capacitor maker's sheet, and the same worked out by hand.</summary>
public class CapacitorTests
{
    public static TheoryData<string, double, double, double, double, double> Cases()
    {
        var cases = new TheoryData<string, double, double, double, double, double>();
        foreach (PublishedRow row in PublishedTable.Read("capacitors"))
            cases.Add(
                row["case"], row.Number("farads"), row.Number("series_milliohms"), row.Number("amps"), row.Number("fall_v"),
                row.Number("seconds"));
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_capacitor_alone_holds_a_current_for_the_time_worked_out(
        string which, double farads, double milliohms, double amps, double fall, double seconds)
    {
        Contract.Assessments.CapacitorResult part = Answer(farads, milliohms, amps).Supply.Capacitors[0];
        Assert.Equal(amps, part.DrawAmps);
        Assert.Equal(fall, part.FallVolts);
        Near.Absolute(1000 * seconds, part.HoldsMilliseconds, 1e-6 + 0.0005 * 1000 * seconds, which + ", ms");
    }

    /// <summary>A bass note lasts half a second. The 16 V module holds it, and nothing is said of it.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void A_capacitor_is_called_brief_where_it_holds_less_than_a_bass_note(
        string which, double farads, double milliohms, double amps, double fall, double seconds)
    {
        Assert.True(fall == 1, which);
        Assert.Equal(
            seconds < 0.5,
            Answer(farads, milliohms, amps).Findings.Any(finding => finding.Code == "supply.capacitor-holds-briefly"));
    }

    /// <summary>1 F (14.4² − 13.4²) / 2 = 13.9 J.</summary>
    [Fact]
    public void One_farad_gives_13_9_joules_from_14_4_to_13_4_volts() =>
        Near.Absolute(13.9, Answer(1, 0, 100).Supply.Capacitors[0].GivesJoules, 1e-9, "J");

    /// <summary>The module's sheet: 17.8 Wh from 16 V to nothing. Volt by volt that adds up.</summary>
    [Fact]
    public void The_16_volt_module_gives_17_8_watt_hours_from_16_volts_down()
    {
        var rig = new SupplyRig(Build(500, 2.1, 100));
        double joules = Enumerable.Range(1, 16)
            .Sum(volts => Stiffening.Of(rig.Complete with { ChargingVolts = volts }, rig.Balance, 0).GivesJoules);
        Near.Absolute(17.78, joules / 3600, 0.005, "Wh");
    }

    /// <summary>
    /// By the constant-power formula, t = E / P: 1440 W for 9.65 ms. The voltage falls on the way, so that is shorter than at the
    /// current of the start, by as much as half the fall.
    /// </summary>
    [Fact]
    public void At_constant_power_the_time_is_shorter_by_half_of_the_fall_s_share()
    {
        Contract.Assessments.CapacitorResult part = Answer(1, 0, 100).Supply.Capacitors[0];
        double seconds = part.GivesJoules / 1440;
        Near.Absolute(0.00965, seconds, 5e-6, "s");
        Near.Relative(1 - 0.5 / 14.4, 1000 * seconds / part.HoldsMilliseconds, 1e-9, "share");
    }

    private static Assessment Answer(double farads, double milliohms, double amps) => Assessed.Of(Build(farads, milliohms, amps));

    private static Build Build(double farads, double milliohms, double amps)
    {
        Build build = SampleBuilds.ConstantCurrent(amps);
        return build with
        {
            Vehicle = build.Vehicle with
            {
                ChargingVolts = 14.4,
                Capacitors = [new Capacitor { At = "bass", Farads = farads, SeriesOhms = milliohms / 1000 }],
            },
        };
    }
}
