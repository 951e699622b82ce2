using Cablewright.Engine.Builds;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
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
        Amplifier amplifier, int index, double nominalFactor, AssumptionList assumptions, Phrase phrase)
    {
        Ruleset ruleset = assumptions.Ruleset;
        string at = $"/amplifiers/{index}";
        double ratingVolts = ruleset.Load.RatingVoltage.Value * nominalFactor;
        if (amplifier.RatedInputAmps is null && amplifier.RatedOutputWatts is null)
            return FuseAlone(amplifier, at, ratingVolts, assumptions);

        AmplifierClass kind = ClassOf(amplifier, at, assumptions);
        double? efficiency = null;
        double fullWatts;
        if (amplifier.RatedInputAmps is { } inputAmps)
        {
            fullWatts = inputAmps * ratingVolts;
            assumptions.Note(
                at + "/ratedInputCurrent", phrase.Value(ratingVolts, "V"),
                "the input current is taken as stated at the rating voltage, where the trade rates amplifiers",
                ruleset.Load.RatingVoltage.Citation);
        }
        else
        {
            efficiency = assumptions.Take(
                amplifier.Efficiency, at, "/efficiency", ruleset.Load.Efficiency(kind),
                "no efficiency is stated; this is the usual one of the class, at rated output");
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

    private static AmplifierDraw FuseAlone(Amplifier amplifier, string at, double ratingVolts, AssumptionList assumptions)
    {
        assumptions.Note(
            at + "/ratedInputCurrent", Phrase.Amps(amplifier.OnBoardFuseAmps!.Value) + ", the rating of its own fuse",
            "only the amplifier's own fuse is stated; it cannot draw more than its rating for long, "
            + "at any voltage and on any programme",
            "definition of a fuse's rating");
        return new AmplifierDraw(
            new LoadDraw(LoadKind.ConstantCurrent, amplifier.OnBoardFuseAmps!.Value), 1, 1, null, ratingVolts, null);
    }

    private static AmplifierClass ClassOf(Amplifier amplifier, string at, AssumptionList assumptions)
    {
        if (amplifier.Class is { } stated) return stated;
        assumptions.Note(
            at + "/amplifierClass", "AB", "no class is stated; AB draws more than D for the same output", "the safe side");
        return AmplifierClass.AB;
    }

    private static LoadDraw FullDraw(
        Amplifier amplifier, string at, double fullWatts, double ratingVolts, AssumptionList assumptions)
    {
        if (amplifier.PowerSupply is null)
        {
            assumptions.Note(
                at + "/powerSupply", "regulated",
                "a converter that holds its output draws more as the voltage falls, "
                + "which is the safe side for drop and stability",
                "the safe side");
        }

        return amplifier.PowerSupply is PowerSupply.Unregulated
            ? new LoadDraw(LoadKind.ConstantResistance, ratingVolts * ratingVolts / fullWatts)
            : new LoadDraw(LoadKind.ConstantPower, fullWatts);
    }

    private static double? CrestFactor(Programme? programme, Ruleset ruleset) =>
        programme is { } stated ? ruleset.Load.CrestFactor(stated).Value : null;

    private static void NoteProgramme(string at, Ruleset ruleset, AssumptionList assumptions) => assumptions.Note(
        at + "/programme", "compressed", "what it plays is not stated: dense music is what it plays for long",
        ruleset.Load.CrestFactorCompressed.Citation);
}
