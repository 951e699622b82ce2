using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Finds by computing what would interrupt a short circuit in time.</summary>
/// <remarks>
/// Tried in this order: another fuse in the same place, of the same family and then of families whose band was read; a fuse at
/// the start of the run itself; a larger conductor; a better way for the fault current.
/// </remarks>
internal sealed class FaultRemedies(CompleteBuild build, DesignEvaluation evaluation)
{
    public string For(Clearing clearing)
    {
        double deviceLoad = evaluation.Envelope.ThermalAmps[clearing.Device.Run];
        if (FuseThatOpens(clearing.Device.Fuse.Family, deviceLoad, clearing.DeviceAmps, clearing.WithstandSeconds) is { } other)
            return $"{other} in the same place opens in time";
        double runLoad = evaluation.Envelope.ThermalAmps[clearing.Run];
        double runAmps = clearing.ConductorAmps * evaluation.Design.Conductors[clearing.Run].Count;
        if (clearing.Run != clearing.Device.Run
            && FuseThatOpens(clearing.Device.Fuse.Family, runLoad, runAmps, clearing.WithstandSeconds) is { } own)
            return $"{own} of its own at \"{build.Runs[clearing.Run].From}\" opens in time";
        if (clearing.ClearingSeconds is { } opens && ConductorThatWithstands(clearing, opens) is { } conductor)
            return $"{conductor} withstands it that long";
        return "a shorter or larger way for the fault current, there and back: a return wire to the battery, or a better ground";
    }

    /// <summary>The families that are known to interrupt a current.</summary>
    public string FamilyThatInterrupts(double amps)
    {
        string[] able =
            [.. build.Ruleset.FuseFamilies.All
                .Where(family => family.InterruptingAt(build.HighestSupplyVolts).Amps >= amps
                    && family.VoltageRatingVolts.Value >= build.HighestSupplyVolts)
                .Select(family => family.Name.Word())];
        return able.Length == 0
            ? "a fuse made for such currents"
            : $"a fuse of the family {string.Join(" or ", able)}, or another part rated for it";
    }

    private string? FuseThatOpens(FuseFamily present, double load, double amps, double withstandSeconds)
    {
        foreach (FuseFamily family in build.Ruleset.FuseFamilies.All
            .Where(family => family.TimeCurrentBand.IsRead).Prepend(present))
        {
            if (family.SmallestCarrying(load) is { } rating
                && family.TimeCurrentBand.SlowestSeconds(amps / rating) is { } seconds
                && !Significant.Exceeds(seconds, withstandSeconds))
                return $"a {Phrase.Amps(rating)} {family.Name.Word()} fuse";
        }

        return null;
    }

    private Conductor? ConductorThatWithstands(Clearing clearing, double seconds)
    {
        CompleteRun run = build.Runs[clearing.Run];
        ConductorChoice choice = evaluation.Design.Conductors[clearing.Run];
        double limit = ShortCircuit.LimitFor(run.InsulationCelsius, build.Ruleset);
        return CandidateList.Offered(build.Stated.Units)
            .Where(size => size.IsLargerThan(choice.Conductor.Size))
            .Select(size => Conductor.Of(size, choice.Conductor.Material))
            .FirstOrDefault(conductor => seconds <= ShortCircuit.WithstandSeconds(
                conductor, clearing.ConductorAmps, Math.Min(evaluation.Envelope.Celsius[clearing.Run], run.InsulationCelsius),
                limit, run.AirCelsius, build.Ruleset.ShortCircuit));
    }
}
