using Cablewright.Engine.Builds;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Works out what an amplifier draws from what is stated of it.</summary>
/// <remarks>
/// The input current a maker states wins over output and efficiency; where only the amplifier's own fuse is known, that fuse's
/// rating is taken as a continuous current, since it cannot draw more for long; and where both are known, they cap its draw.
/// </remarks>
internal static class DrawCompletion
{
    public static AmplifierDraw Complete(
        Amplifier amplifier, int index, double nominalFactor, AssumptionList assumptions)
    {
        Ruleset ruleset = assumptions.Ruleset;
        var at = new Target(Part.Amplifier, index);
        double ratingVolts = ruleset.Load.RatingVoltage.Value * nominalFactor;
        if (amplifier.RatedInputAmps is null && amplifier.RatedOutputWatts is null)
            return FuseAlone(amplifier, at, ratingVolts, assumptions);

        AmplifierClass kind = ClassOf(
            amplifier, amplifier.RatedOutputWatts ?? amplifier.RatedInputAmps!.Value * ratingVolts, at, assumptions);
        double? efficiency = null;
        double fullWatts;
        if (amplifier.RatedInputAmps is { } inputAmps)
        {
            fullWatts = inputAmps * ratingVolts;
            assumptions.Note(new AssumedFigure(
                AssumptionKind.RatingVoltage, at[Member.RatedInputCurrent], ratingVolts, Figure.Volts,
                ruleset.Load.RatingVoltage));
        }
        else
        {
            efficiency = EfficiencyOf(amplifier, kind, at, assumptions);
            fullWatts = amplifier.RatedOutputWatts!.Value / efficiency.Value;
        }

        double ratedAmps = fullWatts / ratingVolts;
        double amps = Math.Min(ratedAmps, amplifier.OnBoardFuseAmps ?? double.PositiveInfinity);
        double? crest = amplifier.CrestFactorDecibels ?? CrestFactor(amplifier.Programme, ruleset);
        if (crest is null) NoteProgramme(at, ruleset, assumptions);
        double outputShare = ProgrammeShares.OutputShare(crest ?? ruleset.Load.CrestFactorCompressed.Value);
        double idleShare = ruleset.Load.IdleCurrent.Value / amps;
        return new AmplifierDraw(
            FullDraw(amplifier, at, amps * ratingVolts, ratingVolts, assumptions),
            ProgrammeShares.Thermal(kind, outputShare, idleShare, ruleset),
            ProgrammeShares.Average(kind, outputShare, idleShare, ruleset),
            amplifier.RatedOutputWatts * (amps / ratedAmps),
            ratingVolts,
            efficiency)
        {
            RatedAmps = ratedAmps,
        };
    }

    private static AmplifierDraw FuseAlone(Amplifier amplifier, Target at, double ratingVolts, AssumptionList assumptions)
    {
        assumptions.Note(new AssumedFigure(
            AssumptionKind.OwnFuseAlone, at[Member.RatedInputCurrent], amplifier.OnBoardFuseAmps!.Value, Figure.Amps, null));
        return new AmplifierDraw(
            new LoadDraw(LoadKind.ConstantCurrent, amplifier.OnBoardFuseAmps!.Value), 1, 1, null, ratingVolts, null);
    }

    /// <summary>
    /// Where nothing says of which class an amplifier is, one just large enough for class D would draw less than a smaller one of
    /// class AB: it counts as drawing no less.
    /// </summary>
    private static double EfficiencyOf(Amplifier amplifier, AmplifierClass kind, Target at, AssumptionList assumptions)
    {
        LoadSection load = assumptions.Ruleset.Load;
        Figure usual = load.Efficiency(kind);
        if (amplifier is { Efficiency: null, Class: null } && kind is AmplifierClass.D)
        {
            Figure ofSmaller = load.Efficiency(AmplifierClass.AB);
            double noLess = ofSmaller.Value * amplifier.RatedOutputWatts!.Value / load.ClassDFrom.Value;
            if (noLess < usual.Value)
            {
                assumptions.Note(new AssumedFigure(
                    AssumptionKind.EfficiencyNoLess, at[Member.Efficiency], noLess, usual.Unit, ofSmaller));
                return noLess;
            }
        }

        return assumptions.Take(amplifier.Efficiency, AssumptionKind.Efficiency, at[Member.Efficiency], usual);
    }

    private static AmplifierClass ClassOf(Amplifier amplifier, double watts, Target at, AssumptionList assumptions)
    {
        if (amplifier.Class is { } stated) return stated;
        Figure from = assumptions.Ruleset.Load.ClassDFrom;
        AmplifierClass usual = watts < from.Value ? AmplifierClass.AB : AmplifierClass.D;
        assumptions.Note(new AssumedWord(AssumptionKind.AmplifierClass, at[Member.AmplifierClass], usual, from));
        return usual;
    }

    private static LoadDraw FullDraw(
        Amplifier amplifier, Target at, double fullWatts, double ratingVolts, AssumptionList assumptions)
    {
        if (amplifier.PowerSupply is null)
            assumptions.Note(new AssumedWord(AssumptionKind.PowerSupply, at[Member.PowerSupply], PowerSupply.Regulated));

        return amplifier.PowerSupply is PowerSupply.Unregulated
            ? new LoadDraw(LoadKind.ConstantResistance, ratingVolts * ratingVolts / fullWatts)
            : new LoadDraw(LoadKind.ConstantPower, fullWatts);
    }

    private static double? CrestFactor(Programme? programme, Ruleset ruleset) =>
        programme is { } stated ? ruleset.Load.CrestFactor(stated).Value : null;

    private static void NoteProgramme(Target at, Ruleset ruleset, AssumptionList assumptions) => assumptions.Note(
        new AssumedWord(
            AssumptionKind.Programme, at[Member.Programme], Programme.Compressed, ruleset.Load.CrestFactorCompressed));
}
