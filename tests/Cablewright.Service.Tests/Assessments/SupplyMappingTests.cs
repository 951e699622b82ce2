using System.Text.Json;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Tests.Support;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>What the build says of the supply arrives in the engine in the unit that the engine's member names.</summary>
public class SupplyMappingTests
{
    private static readonly Engine.Builds.Build Mapped =
        BuildMapping.ToEngine(CompleteBuild.Json.Deserialize(AnswerJson.Shapes.Build)!);

    private static readonly Engine.Builds.Build Empty =
        BuildMapping.ToEngine(JsonSerializer.Deserialize(Builds.Small, AnswerJson.Shapes.Build)!);

    [Fact]
    public void An_alternator_arrives()
    {
        Engine.Builds.Alternator alternator = Mapped.Vehicle.Alternator!;
        Assert.Equal((55, 2.6, 750), (alternator.LowSpeedAmps, alternator.PulleyRatio, alternator.IdleRpm));
        Assert.Equal([new(1500, 50), new(6000, 118)], alternator.OutputPoints);
    }

    [Fact]
    public void What_else_feeds_the_vehicle_arrives()
    {
        Assert.Equal(
            new Engine.Builds.Converter { RatedAmps = 130, RatedWatts = 1800, At = "starter" }, Mapped.Vehicle.Converter);
        Assert.Equal(1.5, Mapped.Vehicle.StandbyLoadAmps);
        Assert.Equal([new() { At = "bass", Farads = 0.5, SeriesOhms = 0.0015 }], Mapped.Vehicle.Capacitors);
    }

    [Fact]
    public void A_battery_arrives_with_hours_and_minutes()
    {
        Engine.Builds.Battery battery = Mapped.Vehicle.Batteries[0];
        Assert.Equal((70, 10, 115), (battery.CapacityAmpHours, battery.RatingHours, battery.ReserveMinutes));
        Assert.Equal((1.15, 0.9, 0.4), (battery.PeukertExponent, battery.StateOfCharge, battery.UsableShare));
        Assert.Equal([new(0.003, 0.25), new(0.002, 120)], battery.Polarisation);
    }

    [Fact]
    public void An_isolator_of_each_kind_arrives() => Assert.Equal(
        [
            new()
            {
                Kind = IsolatorKind.DcDcCharger, RatedAmps = 40, OutputVolts = 14.4, Efficiency = 0.9,
            },
            new() { Kind = IsolatorKind.Relay, RatedAmps = 200, ContactOhms = 0.0005 },
            new() { Kind = IsolatorKind.Diode, RatedAmps = 150, ForwardVolts = 0.7 },
            null,
        ],
        Mapped.Runs.Take(4).Select(run => run.Isolator));

    [Fact]
    public void The_time_with_the_engine_off_arrives_in_minutes() => Assert.Equal(90, Mapped.Limits.EngineOffMinutes);

    [Fact]
    public void What_is_left_out_stays_out()
    {
        Engine.Builds.Battery battery = Empty.Vehicle.Batteries[0];
        Assert.Null(Empty.Vehicle.Converter);
        Assert.Null(Empty.Vehicle.StandbyLoadAmps);
        Assert.Null(Empty.Limits.EngineOffMinutes);
        Assert.Null(Empty.Runs[0].Isolator);
        Assert.Equal((null, null, null), (battery.RatingHours, battery.ReserveMinutes, battery.PeukertExponent));
        Assert.Equal((null, null), (battery.StateOfCharge, battery.UsableShare));
        Assert.Empty(Empty.Vehicle.Capacitors);
        Assert.Empty(battery.Polarisation);
    }
}
