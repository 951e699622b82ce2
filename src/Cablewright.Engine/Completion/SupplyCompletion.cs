using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sources;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of what charges the batteries.</summary>
internal static class SupplyCompletion
{
    /// <summary>What charges the batteries, and what the vehicle itself takes of it.</summary>
    /// <param name="vehicle">What is stated.</param>
    /// <param name="chargingVolts">The charging voltage.</param>
    /// <param name="countsEnergy">Whether the batteries' energy is counted, for which the standby load matters.</param>
    /// <param name="assumptions">Takes what is filled in.</param>
    public static SupplyFigures Complete(
        Vehicle vehicle, double chargingVolts, bool countsEnergy, AssumptionList assumptions)
    {
        double standby = !countsEnergy ? 0 : assumptions.Take(
            vehicle.StandbyLoadAmps, AssumptionKind.StandbyLoad, Target.Of(Part.Vehicle, Member.StandbyLoad),
            assumptions.Ruleset.Supply.StandbyLoad);
        if (vehicle.Converter is { } converter)
        {
            double amps = converter.RatedAmps ?? converter.RatedWatts!.Value / chargingVolts;
            return new SupplyFigures(amps, amps, BaseLoad(vehicle, chargingVolts, assumptions), standby) { IsConverter = true };
        }

        AlternatorCurve? cold = ColdCurve(vehicle.Alternator, assumptions.Ruleset);
        double ratedRpm = assumptions.Ruleset.Supply.AlternatorRatedSpeed.Value;
        if ((vehicle.Alternator?.RatedAmps ?? cold?.AmpsAt(ratedRpm)) is not { } rated)
            return new SupplyFigures(null, vehicle.Alternator?.IdleAmps, vehicle.BaseLoadAmps ?? 0, standby);
        return WithAlternator(vehicle, vehicle.Alternator!, rated, cold, chargingVolts, standby, assumptions);
    }

    private static SupplyFigures WithAlternator(
        Vehicle vehicle, Alternator alternator, double rated, AlternatorCurve? cold, double chargingVolts, double standby,
        AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        double baseLoad = BaseLoad(vehicle, chargingVolts, assumptions);
        double hot = assumptions.Take(
            alternator.HotFactor, AssumptionKind.HotFactor, Target.Of(Part.Alternator, Member.HotFactor),
            ruleset.Supply.AlternatorHotFactor);
        double pulley = alternator.PulleyRatio ?? ruleset.Supply.PulleyRatio.Value;
        double idleRpm = alternator.IdleRpm ?? ruleset.Supply.IdleSpeed.Value;
        if (alternator.IdleAmps is null)
        {
            assumptions.Take(
                alternator.PulleyRatio, AssumptionKind.PulleyRatio, Target.Of(Part.Alternator, Member.PulleyRatio),
                ruleset.Supply.PulleyRatio);
            assumptions.Take(
                alternator.IdleRpm, AssumptionKind.IdleSpeed, Target.Of(Part.Alternator, Member.IdleSpeed),
                ruleset.Supply.IdleSpeed);
        }

        double idle = alternator.IdleAmps ?? (cold ?? UsualCurve(rated, assumptions)).AmpsAt(idleRpm * pulley) * hot;
        double atSpeed = rated * hot, idleAmps = Math.Min(idle, atSpeed);
        var idlePoint = new OutputPoint(idleRpm * pulley, idleAmps);
        var speedPoint = new OutputPoint(ruleset.Supply.AlternatorRatedSpeed.Value, atSpeed);
        return new SupplyFigures(atSpeed, idleAmps, baseLoad, standby)
        {
            RatedAmps = rated,
            IdleRpm = idleRpm,
            PulleyRatio = pulley,
            HotCurve = AlternatorCurve.Through(idlePoint, speedPoint),
        };
    }

    /// <summary>The curve by the points or the label that are stated, or <c>null</c> where only its rating is.</summary>
    private static AlternatorCurve? ColdCurve(Alternator? alternator, Ruleset ruleset)
    {
        if (alternator is null) return null;
        if (alternator.OutputPoints.Count > 1) return AlternatorCurve.Nearest(alternator.OutputPoints);
        return alternator is { LowSpeedAmps: { } low, RatedAmps: { } rated } ? OfLabel(low, rated, ruleset) : null;
    }

    /// <summary>The curve of the label that an alternator of such a rating usually has.</summary>
    private static AlternatorCurve UsualCurve(double ratedAmps, AssumptionList assumptions) => OfLabel(
        assumptions.Take(
            null, AssumptionKind.LowSpeedCurrent, Target.Of(Part.Alternator, Member.LowSpeedCurrent),
            assumptions.Ruleset.Supply.AlternatorLowShare, ratedAmps, Figure.Amps),
        ratedAmps, assumptions.Ruleset);

    private static AlternatorCurve OfLabel(double lowAmps, double ratedAmps, Ruleset ruleset) => AlternatorCurve.Through(
        new OutputPoint(ruleset.Supply.AlternatorLowSpeed.Value, lowAmps),
        new OutputPoint(ruleset.Supply.AlternatorRatedSpeed.Value, ratedAmps));

    private static double BaseLoad(Vehicle vehicle, double chargingVolts, AssumptionList assumptions) => assumptions.Take(
        vehicle.BaseLoadAmps, AssumptionKind.BaseLoad, Target.Of(Part.Vehicle, Member.BaseLoad),
        assumptions.Ruleset.Supply.BaseLoad, 1 / chargingVolts, Figure.Amps);
}
