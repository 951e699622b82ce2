using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Protection;

/// <summary>
/// Which families the fuses of a build may be of that are left open: of each end of a run one ladder, the same whatever is
/// chosen, so that a plan and what is proven of it go by the same.
/// </summary>
/// <remarks>
/// A stated family is alone. Else those count that the build names, or the usual ones, and of these those that serve: their
/// voltage rating is not below the system's highest, and the best of their parts interrupt there what the place asks for
/// (<see cref="RequiredInterrupting"/>; a finding says what to look for), or they are plug-in fuses where these are usual all the
/// same. What the place asks for is taken
/// with conductors that are still open as though they had no resistance. Where none serves, of those rated for the voltage the
/// one that interrupts most is left, and a finding names it.
/// </remarks>
/// <param name="model">The build.</param>
internal sealed class FuseLadders(BuildModel model)
{
    private readonly FuseLadder?[] ladders = new FuseLadder?[2 * model.Build.Runs.Count];
    private LargestFaults? faults;

    private CompleteBuild Build => model.Build;

    /// <summary>The ladder of one end.</summary>
    public FuseLadder At(RunEnd end) => ladders[end.Index] ??= new FuseLadder(
        FamiliesAt(end), family => Build.Ruleset.Fuse.ChosenUpTo(family.Name), Build.Runs[end.Run].AirCelsius);

    private FuseFamily[] FamiliesAt(RunEnd end)
    {
        FuseSlot slot = Build.SlotAt(end);
        if (slot.Family is { } stated) return [Build.Ruleset.FuseFamilies.Of(stated)];
        FuseFamily[] offered = [.. Build.Ruleset.FuseFamilies.InOrderOfChoice.Where(IsOffered)];
        FuseFamily[] rated = [.. offered.Where(family => !Significant.Exceeds(
            Build.HighestSupplyVolts, slot.VoltageRatingVolts ?? family.VoltageRatingVolts.Value))];
        FuseFamily[] serving = [.. rated.Where(family => Interrupts(end, slot, family))];
        return serving.Length > 0 ? serving
            : [(rated.Length > 0 ? rated : offered).MaxBy(family => InterruptsAmps(slot, family))!];
    }

    private bool IsOffered(FuseFamily family) => Build.Stated.Sizing.FuseFamilies is { Count: > 0 } named
        ? named.Contains(family.Name)
        : family.Choice.IsUsual;

    private bool Interrupts(RunEnd end, FuseSlot slot, FuseFamily family)
    {
        double amps = InterruptsAmps(slot, family);
        return !Significant.Exceeds(RequiredInterrupting.ByTable(model, end), amps)
            || RequiredInterrupting.IsUsualPlugIn(model, end, family, amps)
            || !Significant.Exceeds((faults ??= LargestFaults.OfAny(model)).At(model.Topology.NodeAt(end)), amps);
    }

    private double InterruptsAmps(FuseSlot slot, FuseFamily family) => slot.InterruptingRatingAmps
        ?? family.BestInterruptingAt(Math.Max(Build.HighestSupplyVolts, slot.VoltageRatingVolts ?? 0));
}
