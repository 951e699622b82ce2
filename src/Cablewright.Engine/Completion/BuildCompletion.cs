using Cablewright.Engine.Builds;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what a build leaves out, and lists what it filled in.</summary>
internal static class BuildCompletion
{
    /// <summary>A body stated as without resistance counts as nearly so: the node equations divide by it.</summary>
    private const double LeastOhms = 1e-7;

    /// <summary>Completing, connecting and putting a run into words, in runs solved.</summary>
    private const double CostOfRun = 10;

    /// <summary>An alternator that has nothing left still keeps a battery from giving.</summary>
    private const double SmallestSpareAmps = 1;

    public static CompleteBuild Complete(Build build, Ruleset ruleset, WorkMeter meter)
    {
        meter.Count(CostOfRun * build.Runs.Count);
        var phrase = new Phrase(build.Units);
        var assumptions = new AssumptionList(ruleset, phrase);
        var names = new PlaceNames(build);
        double? stated = build.Vehicle.ChargingVolts;
        double nominalFactor = NominalFactor(stated, ruleset);
        double charging = assumptions.Take(
            stated, "/vehicle/chargingVoltage", ruleset.Supply.ChargingVoltage,
            "no charging voltage is stated; a 12 V vehicle is assumed", unit: "V");
        double body = assumptions.Take(
            build.Vehicle.BodyReturnOhms, "/vehicle/body/returnResistance", ruleset.Supply.BodyResistance,
            "the resistance of the body is not stated; in a short circuit it counts as "
            + Phrase.Milliohms(ruleset.Supply.MostBodyResistance.Value));
        bool countsEnergy = build.Vehicle.Batteries.Count > 0 || build.Limits.EngineOffMinutes is not null;
        SupplyFigures supply = SupplyCompletion.Complete(build.Vehicle, charging, countsEnergy, assumptions);
        (int chargingBattery, string? alternatorPlace) = ChargingPlace.Of(build, names);
        double spare = supply.HotAmps is { } hot
            ? Math.Max(SmallestSpareAmps, hot - supply.BaseLoadAmps)
            : double.PositiveInfinity;
        var setting = new SupplySetting(nominalFactor, charging, chargingBattery, spare, countsEnergy);
        IReadOnlyList<CompleteBattery> batteries = BatteryCompletion.Complete(build.Vehicle.Batteries, setting, assumptions);
        AmplifierDraw[] draws =
            [.. build.Amplifiers
                .Select((amplifier, index) => DrawCompletion.Complete(amplifier, index, nominalFactor, assumptions, phrase))];
        IReadOnlyList<CompleteRun> runs = RunCompletion.Complete(build, names, setting, assumptions, phrase);
        CompleteCapacitor[] capacitors = [.. build.Vehicle.Capacitors.Select((capacitor, index) => new CompleteCapacitor(
            capacitor.At,
            capacitor.Farads,
            assumptions.Take(
                capacitor.SeriesOhms, $"/vehicle/capacitors/{index}/seriesResistance", ruleset.Supply.CapacitorResistance,
                "its own resistance is not stated")))];
        BodyConnections bodyConnections = BodyConnections.Find(runs, batteries, names, assumptions);
        DropLimits drop = DropOf(build.Limits, charging, assumptions);
        return new CompleteBuild
        {
            Stated = build,
            Ruleset = ruleset,
            Meter = meter,
            Phrase = phrase,
            Names = names,
            NominalFactor = nominalFactor,
            ChargingVolts = charging,
            BodyOhms = Math.Max(body, LeastOhms),
            MostBodyOhms = Math.Max(build.Vehicle.BodyReturnOhms ?? ruleset.Supply.MostBodyResistance.Value, LeastOhms),
            Drop = drop,
            Supply = supply,
            Batteries = batteries,
            ChargingBattery = chargingBattery,
            Draws = draws,
            Runs = runs,
            Body = bodyConnections,
            Capacitors = capacitors,
            AlternatorPlace = alternatorPlace,
            CountsEnergy = countsEnergy,
            Tolerances = build.Include.Contains(Extra.Robustness)
                ? TolerancesOf(build.Tolerances, nominalFactor, assumptions)
                : null,
            Assumptions = assumptions.Noted,
        };
    }

    private static double NominalFactor(double? chargingVolts, Ruleset ruleset) =>
        chargingVolts >= ruleset.Circuit.FourBatteryThreshold.Value ? 4
        : chargingVolts >= ruleset.Circuit.TwoBatteryThreshold.Value ? 2
        : 1;

    private static CompleteTolerances TolerancesOf(Tolerances stated, double nominalFactor, AssumptionList assumptions)
    {
        ToleranceSection usual = assumptions.Ruleset.Tolerance;
        return new CompleteTolerances(
            assumptions.Take(
                stated.EfficiencyShare, "/tolerances/efficiency", usual.Efficiency, "how sure it is, is not stated"),
            assumptions.Take(
                stated.ChargingVolts, "/tolerances/chargingVoltage", usual.ChargingVoltage, "how sure it is, is not stated",
                nominalFactor, "V"),
            assumptions.Take(stated.LengthShare, "/tolerances/length", usual.Length, "how sure they are, is not stated"),
            assumptions.Take(
                stated.SurroundingsKelvin, "/tolerances/surroundings", usual.Surroundings, "how sure they are, is not stated"));
    }

    private static DropLimits DropOf(Limits limits, double chargingVolts, AssumptionList assumptions)
    {
        if (limits.MaxDropVolts is { } volts) return new DropLimits(volts, volts, volts, OwnLimits.MaxDrop);
        if (limits.MaxDropFraction is { } fraction)
            return new DropLimits(
                fraction * chargingVolts, fraction * chargingVolts, fraction * chargingVolts, OwnLimits.MaxDrop);
        Figure target = assumptions.Ruleset.Drop.Target, limit = assumptions.Ruleset.Drop.Limit;
        double clean = assumptions.Ruleset.Drop.Clean.Value * chargingVolts;
        assumptions.Note(
            "/limits/maxDrop", $"{Phrase.Percent(target.Value)} as the target, {Phrase.Percent(limit.Value)} as the limit",
            "no limit for the drop is stated", $"{target.Citation}; {limit.Citation}");
        return new DropLimits(limit.Value * chargingVolts, clean, target.Value * chargingVolts, limit);
    }
}
