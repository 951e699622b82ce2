using Cablewright.Engine.Builds;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completing;

/// <summary>Fills in what a build leaves out, and lists what it filled in.</summary>
internal static class BuildCompletion
{
    /// <summary>A body stated as without resistance counts as nearly so: the node equations divide by it.</summary>
    private const double LeastOhms = 1e-7;

    /// <summary>An alternator that has nothing left still keeps a battery from giving.</summary>
    private const double SmallestSpareAmps = 1;

    public static CompleteBuild Complete(Build build, Ruleset ruleset)
    {
        var phrase = new Phrase(build.Units);
        var assumptions = new AssumptionList(ruleset, phrase);
        var names = new PlaceNames(build);
        double? stated = build.Vehicle.ChargingVolts;
        double nominalFactor = NominalFactor(stated, ruleset);
        double charging = assumptions.Take(
            stated, "/vehicle/chargingVoltage", "supply.charging-voltage",
            "no charging voltage is stated; a 12 V vehicle is assumed", unit: "V");
        double body = assumptions.Take(
            build.Vehicle.BodyReturnOhms, "/vehicle/body/returnResistance", "supply.body-resistance",
            "the resistance of the body is not stated");
        SupplyFigures supply = SupplyOf(build.Vehicle, charging, assumptions);
        int chargingBattery = build.Vehicle.Alternator?.At is { } at ? names[at].Index : 0;
        double spare = supply.HotAmps is { } hot
            ? Math.Max(SmallestSpareAmps, hot - supply.BaseLoadAmps)
            : double.PositiveInfinity;
        IReadOnlyList<CompleteBattery> batteries = BatteryCompletion.Complete(
            build.Vehicle.Batteries, nominalFactor, charging, chargingBattery, spare, assumptions);
        AmplifierDraw[] draws =
            [.. build.Amplifiers
                .Select((amplifier, index) => DrawCompletion.Complete(amplifier, index, nominalFactor, assumptions, phrase))];
        IReadOnlyList<CompleteRun> runs = RunCompletion.Complete(build, names, assumptions, phrase);
        BodyConnections bodyConnections = BodyConnections.Find(runs, batteries, names, assumptions);
        DropLimits drop = DropOf(build.Limits, charging, assumptions);
        return new CompleteBuild
        {
            Stated = build,
            Ruleset = ruleset,
            Phrase = phrase,
            Names = names,
            NominalFactor = nominalFactor,
            ChargingVolts = charging,
            BodyOhms = Math.Max(body, LeastOhms),
            Drop = drop,
            Supply = supply,
            Batteries = batteries,
            ChargingBattery = chargingBattery,
            Draws = draws,
            Runs = runs,
            Body = bodyConnections,
            Assumptions = assumptions.Noted,
        };
    }

    private static double NominalFactor(double? chargingVolts, Ruleset ruleset) =>
        chargingVolts >= ruleset["circuit.four-battery-threshold"].Value ? 4
        : chargingVolts >= ruleset["circuit.two-battery-threshold"].Value ? 2
        : 1;

    private static SupplyFigures SupplyOf(Vehicle vehicle, double chargingVolts, AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        if (vehicle.Alternator?.RatedAmps is not { } rated)
            return new SupplyFigures(null, vehicle.Alternator?.IdleAmps, vehicle.BaseLoadAmps ?? 0);
        double baseLoad = assumptions.Take(
            vehicle.BaseLoadAmps, "/vehicle/baseLoad", "supply.base-load", "what the vehicle itself draws is not stated",
            1 / chargingVolts, "A");
        double hot = assumptions.Take(
            vehicle.Alternator.HotFactor, "/vehicle/alternator/hotFactor", "supply.alternator-hot-factor",
            "a hot alternator gives less than its rating");
        double idle = assumptions.Take(
            vehicle.Alternator.IdleAmps, "/vehicle/alternator/idleCurrent", "supply.alternator-idle-share",
            "its output at idle is not stated", rated, "A");
        return new SupplyFigures(rated * hot, Math.Min(idle, rated * hot), baseLoad);
    }

    private static DropLimits DropOf(Limits limits, double chargingVolts, AssumptionList assumptions)
    {
        if (limits.MaxDropVolts is { } volts) return new DropLimits(volts, volts, "limits.maxDrop");
        if (limits.MaxDropFraction is { } fraction)
            return new DropLimits(fraction * chargingVolts, fraction * chargingVolts, "limits.maxDrop");
        Figure target = assumptions.Ruleset["drop.target"], limit = assumptions.Ruleset["drop.limit"];
        assumptions.Note(
            "/limits/maxDrop", $"{Phrase.Percent(target.Value)} as the target, {Phrase.Percent(limit.Value)} as the limit",
            "no limit for the drop is stated", $"{target.Citation}; {limit.Citation}");
        return new DropLimits(limit.Value * chargingVolts, target.Value * chargingVolts, limit.Id);
    }
}
