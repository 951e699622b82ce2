using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using Param = Cablewright.Contract.Assessments.Param;

namespace Cablewright.Reports.Findings;

/// <summary>Finds by computing what would interrupt a short circuit in time.</summary>
/// <remarks>
/// Tried in this order: another fuse in the same place, of the same family and then of families whose band was read; a fuse at
/// the start of the run itself; a larger conductor; a better way for the fault current.
/// </remarks>
internal sealed class FaultRemedies(CompleteBuild build, DesignEvaluation evaluation)
{
    private readonly Speech speech = build.Speech;

    public string For(Clearing clearing)
    {
        double deviceLoad = evaluation.Envelope.ThermalAmps[clearing.Device.Run];
        if (FuseThatOpens(clearing.Device.Fuse.Family, deviceLoad, clearing.DeviceAmps, clearing.WithstandSeconds) is { } other)
            return speech.Text("remedy.fault.other-fuse", other);
        double runLoad = evaluation.Envelope.ThermalAmps[clearing.Run];
        double runAmps = clearing.ConductorAmps * evaluation.Design.Conductors[clearing.Run].Count;
        if (clearing.Run != clearing.Device.Run
            && FuseThatOpens(clearing.Device.Fuse.Family, runLoad, runAmps, clearing.WithstandSeconds) is { } own)
            return speech.Text("remedy.fault.own-fuse", own.And(new Params { ["place"] = build.Runs[clearing.Run].From }));
        if (clearing.ClearingSeconds is { } opens && ConductorThatWithstands(clearing, opens) is { } conductor)
            return speech.Text("remedy.fault.conductor", new Params { ["conductor"] = conductor.ToString() });
        return speech.Text("remedy.fault.better-way", []);
    }

    /// <summary>A part of the family that interrupts a current.</summary>
    public string PartThatInterrupts(FuseFamily family, double amps) =>
        speech.Text("remedy.interrupting.part", new Params { ["family"] = family.Name.Word(), ["amps"] = amps });

    /// <summary>The families that are known to interrupt a current; before them the part's own rating, unless it is
    /// stated.</summary>
    public string FamilyThatInterrupts(double amps, bool isStated)
    {
        string[] able =
            [.. build.Ruleset.FuseFamilies.All
                .Where(family => family.InterruptingAt(build.HighestSupplyVolts).Amps >= amps
                    && family.VoltageRatingVolts.Value >= build.HighestSupplyVolts)
                .Select(family => family.Name.Word())];
        string fuse = able.Length == 0
            ? speech.Text("remedy.interrupting.special-fuse", [])
            : speech.Text("remedy.interrupting.families", new Params { ["families"] = Param.Of(able) });
        return isStated ? fuse : speech.Text("remedy.interrupting.state-it", new Params { ["amps"] = amps, ["fuse"] = fuse });
    }

    /// <summary>Rating and family of one that opens in time; <c>null</c> where there is none.</summary>
    private Params? FuseThatOpens(FuseFamily present, double load, double amps, double withstandSeconds)
    {
        foreach (FuseFamily family in build.Ruleset.FuseFamilies.All
            .Where(family => family.TimeCurrentBand.IsRead).Prepend(present))
        {
            if (family.SmallestCarrying(load) is { } rating
                && family.TimeCurrentBand.SlowestSeconds(amps / rating) is { } seconds
                && !Significant.Exceeds(seconds, withstandSeconds))
                return new Params { ["ratingAmps"] = rating, ["family"] = family.Name.Word() };
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
