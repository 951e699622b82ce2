using Cablewright.Engine.Rules;

namespace Cablewright.Engine.Changes;

/// <summary>What a broken rule is about.</summary>
internal static class Concerns
{
    /// <summary>Whether another fuse, or one where there is none, may cure it.</summary>
    public static bool Fuse(BreachKind kind) => kind is BreachKind.FuseMissingAtBattery or BreachKind.FuseMissingAtReduction
        or BreachKind.FuseAboveConductor or BreachKind.NoFuseFits or BreachKind.ParallelUnguarded or BreachKind.InterruptingTooLow
        or BreachKind.FuseMayNotOpen or BreachKind.FuseOpensTooLate or BreachKind.FuseVoltageTooLow or BreachKind.FuseBelowLoad;

    /// <summary>Whether a higher insulation rating may cure it.</summary>
    public static bool Heat(BreachKind kind) => kind is BreachKind.OverAmpacity or BreachKind.SurroundingsTooHot
        or BreachKind.FuseAboveConductor or BreachKind.FuseMissingAtReduction or BreachKind.NoFuseFits
        or BreachKind.ParallelUnguarded;
}
