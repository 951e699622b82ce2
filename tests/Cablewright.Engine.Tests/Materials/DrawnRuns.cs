using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Materials;

/// <summary>What a job needs of a build in which everything is given, read off it without an assessment.</summary>
internal static class DrawnRuns
{
    public static BillOfMaterials NeedsOf(Build build)
    {
        CompleteBuild complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        return new BillOfMaterials(complete, [.. complete.Runs.Select(run => Drawn(run))]);
    }

    private static DesignedRun Drawn(CompleteRun run) => new(
        run, new ConductorChoice(Conductor.Of(run.Given!.Size, run.Given.Material), run.GivenCount!.Value),
        FuseOf(run.Near), FuseOf(run.Far), 0);

    private static FittedFuse? FuseOf(FuseSlot slot) => slot.RatingAmps is { } rating
        ? new FittedFuse(
            Decided.Given, rating, RulesetLibrary.Newest.FuseFamilies.Of(slot.Family!.Value), 0.15,
            slot.PerConductor ?? false, 32, null)
        : null;
}
