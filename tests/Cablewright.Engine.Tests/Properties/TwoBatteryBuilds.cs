using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Properties;

/// <summary>
/// Random builds with a starter battery, a rear battery tied to it, a block and an amplifier, and everything back over the body.
/// </summary>
internal static class TwoBatteryBuilds
{
    private static readonly Gen<Run> AnyRun = Gen.Select(
        Gen.OneOfConst(GivenBuilds.Gauges), Gen.Enum<Material>(), Gen.Double[0.3, 8], Gen.Int[1, 2],
        Gen.OneOfConst(60.0, 100, 150, 200, 300), (gauge, material, metres, count, amps) =>
        {
            Run run = Run("", "", "", metres, gauge + " AWG", material);
            return run with { Fuse = Anl(amps), Conductor = run.Conductor with { Count = count } };
        });

    public static Gen<Build> Any { get; } = Gen.Select(
        AnyRun.Array[4], Gen.Double[0.002, 0.02], Gen.Double[0.002, 0.03], Gen.Double[0.0002, 0.002],
        (runs, starter, rear, body) => OneAmplifier() with
        {
            Vehicle = new Vehicle
            {
                ChargingVolts = 14.4,
                BodyReturnOhms = body,
                Batteries = [new Battery { Id = "starter", InternalOhms = starter },
                    new Battery { Id = "rear", InternalOhms = rear, Chemistry = Chemistry.Agm }],
            },
            Runs =
            [
                runs[0] with { Id = "tie", From = "starter", To = "rear", Side = Side.Supply, FarFuse = runs[0].Fuse },
                runs[1] with { Id = "main", From = "rear", To = "block", Side = Side.Supply },
                runs[2] with { Id = "feed", From = "block", To = "bass", Fuse = NoFuse },
                runs[3] with { Id = "second-way", From = "starter", To = "block", Side = Side.Supply },
                Run("return", "bass", "body", 0.6, "1/0 AWG"),
                Run("front-strap", "starter", "body", 0.4, "1/0 AWG") with { Side = Side.Return },
                Run("rear-strap", "rear", "body", 0.5, "2 AWG") with { Side = Side.Return },
            ],
        });

    /// <summary>The fault currents of a build in which everything is given.</summary>
    public static (FaultCurrents Faults, CircuitModel Wiring) FaultsOf(Build build)
    {
        CompleteBuild complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        var model = BuildModel.Of(complete);
        return (new FaultCurrents(model, DesignOf(complete)), model.Circuit);
    }

    public static Design DesignOf(CompleteBuild complete) => new(
        [.. complete.Runs.Select(run => new ConductorChoice(run.Given!, run.GivenCount!.Value))],
        [.. complete.Runs.Select(run => Fitted(run.Near))],
        [.. complete.Runs.Select(run => Fitted(run.Far))]);

    private static FittedFuse? Fitted(FuseSlot slot)
    {
        if (slot.RatingAmps is not { } rating) return null;
        var family = RulesetLibrary.Newest.FuseFamilies.Of(slot.Family!.Value);
        return new FittedFuse(Decided.Given, rating, family, 0.15, slot.PerConductor ?? false, family.VoltageRatingVolts.Value,
            slot.InterruptingRatingAmps);
    }
}
