using Cablewright.Engine.Rules;

namespace Cablewright.Engine.Changes;

/// <summary>What a broken rule is about.</summary>
internal static class Concerns
{
    /// <summary>Whether another fuse, or one where there is none, may cure it.</summary>
    public static bool Fuse(ViolationKind kind) =>
        kind is ViolationKind.FuseMissingAtBattery or ViolationKind.FuseMissingAtReduction
        or ViolationKind.FuseAboveConductor or ViolationKind.NoFuseFits or ViolationKind.ParallelUnprotected
        or ViolationKind.InterruptingTooLow or ViolationKind.FuseMayNotOpen or ViolationKind.FuseClearsTooLate
        or ViolationKind.FuseVoltageTooLow or ViolationKind.FuseBelowLoad;

    /// <summary>Whether a higher insulation rating may cure it.</summary>
    public static bool Heat(ViolationKind kind) => kind is ViolationKind.OverAmpacity or ViolationKind.SurroundingsTooHot
        or ViolationKind.FuseAboveConductor or ViolationKind.FuseMissingAtReduction or ViolationKind.NoFuseFits
        or ViolationKind.ParallelUnprotected;
}
