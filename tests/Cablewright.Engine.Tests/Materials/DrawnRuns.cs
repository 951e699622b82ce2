using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Materials;

/// <summary>What a job needs of a build in which everything is given, read off it without an assessment.</summary>
internal static class DrawnRuns
{
    public static BillOfMaterials NeedsOf(Build build)
    {
        CompleteBuild complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        return new BillOfMaterials(complete, [.. complete.Runs.Select(run => ResultOf(run))]);
    }

    /// <summary>
    /// A run as an answer tells of it; only what a list of materials looks at has a value that means something.
    /// </summary>
    private static RunResult ResultOf(CompleteRun run) => new()
    {
        Id = run.Id,
        Side = run.Side,
        From = run.From,
        To = run.To,
        LengthMetres = run.LengthMetres,
        Route = run.Route,
        Conductor = new ConductorResult(
            Decided.Given, run.Given!.Size, run.Given.Material, run.GivenCount!.Value, run.InsulationCelsius, 0),
        PeakCurrentAmps = 0,
        ThermalCurrentAmps = 0,
        ResistanceMilliohms = 0,
        DropVolts = 0,
        LossWatts = 0,
        TemperatureCelsius = 0,
        AmpacityAmps = 0,
        AmpacityTableAmps = null,
        AmpacityHeatBalanceAmps = 0,
        Utilisation = null,
        ProtectedBy = [],
        Fuse = FuseOf(run.Near),
        FarFuse = FuseOf(run.Far),
    };

    private static FuseResult? FuseOf(FuseSlot slot) => slot.RatingAmps is { } rating
        ? new FuseResult(Decided.Given, rating, slot.Family!.Value, 0.15, slot.PerConductor ?? false)
        : null;
}
