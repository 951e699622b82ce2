using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Completion;

/// <summary>
/// A run of 5 m in 60 °C of the engine bay, 40 °C of the cabin and 70 °C below the floor. Of a run from the battery under the
/// bonnet whose route is not stated, 1.5 m lie in the engine bay: (1.5 · 60 + 3.5 · 40) / 5 = 46 °C in the mean.
/// </summary>
public class EngineBayTests
{
    private static readonly Limits Surroundings = new() { EngineBayCelsius = 60, CabinCelsius = 40, UnderbodyCelsius = 70 };

    [Theory]
    [InlineData(5, 60, 46)]
    [InlineData(1.6, 60, 58.75)]
    [InlineData(1.5, 60, 60)]
    [InlineData(1.0, 60, 60)]
    public void An_unstated_route_leaves_the_engine_bay_after_a_while(double metres, double hottest, double mean) =>
        Lies(Wire("main", "starter", "bass") with { LengthMetres = metres, Route = null }, hottest, mean);

    /// <summary>2 of 5 m: (2 · 60 + 3 · 40) / 5 = 48 °C, below the floor (2 · 60 + 3 · 70) / 5 = 66 °C.</summary>
    [Theory]
    [InlineData(null, 2.0, 60, 48)]
    [InlineData(null, 0.0, 40, 40)]
    [InlineData(Route.Cabin, null, 40, 40)]
    [InlineData(Route.Cabin, 2.0, 60, 48)]
    [InlineData(Route.Cabin, 0.0, 40, 40)]
    [InlineData(Route.Loom, 2.0, 60, 48)]
    [InlineData(Route.Underbody, null, 70, 70)]
    [InlineData(Route.Underbody, 2.0, 70, 66)]
    [InlineData(Route.EngineBay, null, 60, 60)]
    [InlineData(Route.EngineBay, 2.0, 60, 48)]
    [InlineData(Route.EngineBay, 5.0, 60, 60)]
    [InlineData(Route.Underbody, 9.0, 60, 60)]
    public void A_stated_route_holds_but_for_what_is_stated_to_lie_there(
        Route? route, double? engineBay, double hottest, double mean) =>
        Lies(FiveMetres("starter", "bass") with { Route = route, EngineBayMetres = engineBay }, hottest, mean);

    [Theory]
    [InlineData("bass", "starter", 60, 46)]
    [InlineData("starter", "block", 60, 46)]
    [InlineData("block", "bass", 40, 40)]
    [InlineData("rear", "bass", 40, 40)]
    public void Only_the_battery_that_the_alternator_charges_is_under_the_bonnet(
        string from, string to, double hottest, double mean) =>
        Lies(FiveMetres(from, to) with { Route = null }, hottest, mean);

    [Fact]
    public void An_alternator_s_cable_begins_there_too()
    {
        Build build = Of(FiveMetres("alternator", "rear") with { Route = null }).WithAlternator(100);
        Alternator apart = build.Vehicle.Alternator! with { At = "alternator" };
        Lies(build with { Vehicle = build.Vehicle with { Alternator = apart } }, 60, 46);
    }

    /// <summary>
    /// 6 AWG in 50 °C bears 120 A · √(55/75) = 102.7619 A; at (1.5 · 50 + 3.5 · 40) / 5 = 43 °C it has 0.0172414 · 1.02 /
    /// 13.30177 · (1 + 0.00393 · 23) = 1.441601 mΩ/m, over 5 m, joints of 0.2 and a fuse of 1 mΩ 8.408007 mΩ. One ampere warms it
    /// by some 5 mK.
    /// </summary>
    [Fact]
    public void The_hottest_part_decides_what_it_bears_and_the_mean_what_it_resists()
    {
        Build build = ConstantCurrent(1).WithRun("main", run => run with { LengthMetres = 5, Route = null });
        RunResult main = Assessed.Of(build with { Limits = build.Limits with { EngineBayCelsius = 50 } }).Runs[0];
        Near.Relative(102.7619, main.AmpacityAmps, 1e-6, "ampacity, A");
        Near.Relative(8.408007, main.ResistanceMilliohms, 5e-5, "resistance, mohm");
        Near.Absolute(50, main.TemperatureCelsius, 0.02, "in the hottest part, C");
    }

    private static Run FiveMetres(string from, string to) => Wire("main", from, to) with { LengthMetres = 5 };

    private static void Lies(Run run, double hottest, double mean) => Lies(Of(run), hottest, mean);

    private static void Lies(Build build, double hottest, double mean)
    {
        CompleteRun run = ModelOf(build with { Limits = Surroundings }).Build.Runs[0];
        Near.Relative(hottest, run.AirCelsius, 1e-12, "hottest, C");
        Near.Relative(mean, run.MeanAirCelsius, 1e-12, "mean, C");
    }
}
