using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests;

/// <summary>Builds with something between two batteries, or with the alternator at a place of its own.</summary>
internal static class PartedBuilds
{
    /// <summary>
    /// The starter battery, 2 m of 1/0 with an isolator to a rear battery behind 1 Ω, and on that a load of exactly these
    /// amperes.
    /// </summary>
    public static Build Behind(Isolator? isolator, double amps) => OneAmplifier() with
    {
        Vehicle = OneAmplifier().Vehicle with { Batteries = [Starter(), Starter() with { Id = "rear", InternalOhms = 1 }] },
        Amplifiers = [new Amplifier { Id = "bass", OnBoardFuseAmps = amps }],
        Runs =
        [
            Run("link", "starter", "rear", 2, "1/0 AWG") with { Fuse = Anl(100), FarFuse = Anl(100), Isolator = isolator },
            Run("feed", "rear", "bass", 1, "6 AWG") with { Fuse = Anl(100) },
            Run("return", "bass", "rear", 1, "6 AWG") with { Side = Side.Return },
            Run("front-strap", "starter", "body", 0.4, "1/0 AWG") with { Side = Side.Return },
            Run("rear-strap", "rear", "body", 0.5, "1/0 AWG") with { Side = Side.Return },
        ],
    };

    /// <summary>A relay of 1 mΩ.</summary>
    public static Isolator Relay(double? ratedAmps = 200) =>
        new() { Kind = IsolatorKind.Relay, RatedAmps = ratedAmps, ContactOhms = 0.001 };

    /// <summary>A diode that takes 0.7 V.</summary>
    public static Isolator Diode(double ratedAmps = 200) =>
        new() { Kind = IsolatorKind.Diode, RatedAmps = ratedAmps, ForwardVolts = 0.7 };

    /// <summary>A charger that puts out 14.4 V at an efficiency of 0.9.</summary>
    public static Isolator Charger(double ratedAmps) =>
        new() { Kind = IsolatorKind.DcDcCharger, RatedAmps = ratedAmps, OutputVolts = 14.4, Efficiency = 0.9 };

    /// <summary>
    /// The golden case's build with its alternator, of a label that gives so much hot, at a place of its own: 4 AWG in 40 °C to
    /// the battery, a fuse there.
    /// </summary>
    public static Build WithAlternatorCable(double hotAmps, double metres)
    {
        Build build = OneAmplifier().WithAlternator(hotAmps / 0.8)
            .With(Run("charge", "alternator", "starter", metres, "4 AWG") with { FarFuse = Anl(150) });
        return build with
        {
            Vehicle = build.Vehicle with { Alternator = build.Vehicle.Alternator! with { At = "alternator" } },
        };
    }

    public static Build WithBattery(this Build build, string id, Func<Battery, Battery> change) => build with
    {
        Vehicle = build.Vehicle with
        {
            Batteries = [.. build.Vehicle.Batteries.Select(battery => battery.Id == id ? change(battery) : battery)],
        },
    };
}
