using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;
using Route = Cablewright.Vocabulary.Route;

namespace Cablewright.Service.Health;

/// <summary>
/// A build with everything given, whose answer is known: the tests compute it by hand. A process that does not come to it, on
/// this machine with this runtime, must not give answers.
/// </summary>
internal static class ReferenceBuild
{
    /// <summary>Voltage at the amplifier, in volts, at six significant digits.</summary>
    public const double TerminalVolts = 13.3106;

    /// <summary>Input current of the amplifier, in amperes, at six significant digits.</summary>
    public const double PeakCurrentAmps = 86.5474;

    /// <summary>Whether the engine gives the known answer; computed once.</summary>
    public static Lazy<bool> GivesItsKnownAnswer { get; } = new(Check);

    /// <summary>The build.</summary>
    public static Build Stated { get; } = new()
    {
        Vehicle = new Vehicle
        {
            ChargingVolts = 13.8,
            BodyReturnOhms = 0.001,
            Batteries = [new Battery { Id = "battery", InternalOhms = 0.005 }],
        },
        Amplifiers =
        [
            new Amplifier
            {
                Id = "amplifier",
                RatedInputAmps = 80,
                PowerSupply = PowerSupply.Regulated,
                Programme = Programme.Sine,
            },
        ],
        Runs =
        [
            Wire("supply", "battery", "amplifier", 5) with
            {
                Fuse = new FuseWish { RatingAmps = 150, Family = FuseFamilyName.Anl, DistanceMetres = 0.15 },
            },
            Wire("return", "amplifier", "body", 1),
            Wire("strap", "body", "battery", 0.5),
        ],
        Limits = new Limits { MaxDropFraction = 0.05, CabinCelsius = 30 },
    };

    private static bool Check()
    {
        Assessment answer = Assessor.Assess(Stated, RulesetLibrary.Find("2026.2")!);
        AmplifierResult amplifier = answer.Amplifiers[0];
        return answer.Verdict != Verdict.Fail
            && IsNear(amplifier.TerminalVolts, TerminalVolts)
            && IsNear(amplifier.PeakCurrentAmps, PeakCurrentAmps);
    }

    private static bool IsNear(double computed, double known) => Math.Abs(computed / known - 1) < 1e-5;

    private static Run Wire(string id, string from, string to, double lengthMetres) => new()
    {
        Id = id,
        From = from,
        To = to,
        LengthMetres = lengthMetres,
        Route = Route.Cabin,
        JointOhms = 0.0001,
        Conductor = new ConductorWish
        {
            Size = ConductorSize.Of("2 AWG"),
            Material = Material.Copper,
            InsulationCelsius = 105,
            Count = 1,
        },
    };
}
