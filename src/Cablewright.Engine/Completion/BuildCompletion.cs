using Cablewright.Engine.Builds;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
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
        var assumptions = new AssumptionList(ruleset);
        var names = new PlaceNames(build);
        double? stated = build.Vehicle.ChargingVolts;
        double nominalFactor = NominalFactor(stated, ruleset);
        double charging = assumptions.Take(
            stated, AssumptionKind.ChargingVoltage, Target.Of(Part.Vehicle, Member.ChargingVoltage),
            ruleset.Supply.ChargingVoltage, unit: Figure.Volts);
        double body = assumptions.Take(
            build.Vehicle.BodyReturnOhms, AssumptionKind.BodyResistance, Target.Of(Part.Body, Member.ReturnResistance),
            ruleset.Supply.BodyResistance, most: ruleset.Supply.MostBodyResistance);
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
                .Select((amplifier, index) => DrawCompletion.Complete(amplifier, index, nominalFactor, assumptions))];
        IReadOnlyList<CompleteRun> runs = RunCompletion.Complete(build, names, setting, assumptions);
        CompleteCapacitor[] capacitors = [.. build.Vehicle.Capacitors.Select((capacitor, index) => new CompleteCapacitor(
            capacitor.At,
            capacitor.Farads,
            assumptions.Take(
                capacitor.SeriesOhms, AssumptionKind.CapacitorResistance,
                new Target(Part.Capacitor, index, Member.SeriesResistance), ruleset.Supply.CapacitorResistance)))];
        BodyConnections bodyConnections = BodyConnections.Find(runs, batteries, names, assumptions);
        DropLimits drop = DropOf(build.Limits, charging, assumptions);
        return new CompleteBuild
        {
            Stated = build,
            Ruleset = ruleset,
            Meter = meter,
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
            NamesEngine = build.Runs.Any(run => run.EndsAt(PlaceNames.Engine)),
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
            Take(stated.EfficiencyShare, AssumptionKind.Tolerance, Member.Efficiency, usual.Efficiency),
            assumptions.Take(
                stated.ChargingVolts, AssumptionKind.Tolerance, Target.Of(Part.Tolerances, Member.ChargingVoltage),
                usual.ChargingVoltage, nominalFactor, Figure.Volts),
            Take(stated.LengthShare, AssumptionKind.Tolerances, Member.Length, usual.Length),
            Take(stated.SurroundingsKelvin, AssumptionKind.Tolerances, Member.Surroundings, usual.Surroundings));

        double Take(double? value, AssumptionKind kind, Member member, Figure figure) =>
            assumptions.Take(value, kind, Target.Of(Part.Tolerances, member), figure);
    }

    private static DropLimits DropOf(Limits limits, double chargingVolts, AssumptionList assumptions)
    {
        if (limits.MaxDropVolts is { } volts) return new DropLimits(volts, volts, volts, OwnLimits.MaxDrop);
        if (limits.MaxDropFraction is { } fraction)
            return new DropLimits(
                fraction * chargingVolts, fraction * chargingVolts, fraction * chargingVolts, OwnLimits.MaxDrop);
        Figure target = assumptions.Ruleset.Drop.Target, limit = assumptions.Ruleset.Drop.Limit;
        double clean = assumptions.Ruleset.Drop.Clean.Value * chargingVolts;
        assumptions.Note(new AssumedDropLimits(target, limit));
        return new DropLimits(limit.Value * chargingVolts, clean, target.Value * chargingVolts, limit);
    }
}
