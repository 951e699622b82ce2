using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>What can be wrong with a build, the most dangerous first; each kind is one finding code.</summary>
internal enum ViolationKind
{
    FuseMissingAtBattery,
    FuseMissingAtReduction,
    FuseAboveConductor,
    NoFuseFits,
    ParallelUnprotected,
    InterruptingTooLow,
    FuseMayNotOpen,
    FuseClearsTooLate,
    VoltageCollapse,
    OverAmpacity,
    IsolatorOverRated,
    SurroundingsTooHot,
    FuseTooFar,
    FuseVoltageTooLow,
    FuseBelowLoad,
    OutsideSupplyRange,
    StrapTooSmall,
    DropOverLimit,
    TerminalTooSmall,
    EngineOffTooShort,
    FuseChosen,
    AlternatorCableUnprotected,
    InterruptingUnknown,
    BandRecalled,
    OverloadHurts,
    FuseHotBelowLoad,
    IsolatorUnrated,
    DropHigh,
    FuseOpensOnNote,
    ReturnBelowSupply,
    SharedReturnBelowSupply,
    StrapBelowFuses,
    BodyDropLarge,
    AlternatorDropLarge,
    FuseInReturn,
    FuseNotStandard,
    NotSelective,
    DropOverTarget,
    CopperClad,
    RatingAboveOnBoardFuse,
    MixedChemistries,
    SupplyNotCharged,
    FullOutputNotHeld,
    VoltageLowAtFullOutput,
    AverageAboveAlternator,
    AverageAboveCharger,
    PeakAboveConverter,
    FuseNotNear,
    PeakAboveAlternator,
    AverageAboveIdle,
    CapacitorHoldsBriefly,
    BeyondStock,
    BudgetReached,
}

/// <summary>One rule that does not hold, in numbers; it becomes a finding only when an answer is written.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Index">The amplifier or run it is about; 0 where it is about the whole.</param>
/// <param name="IsFar">Whether it is about the far end of a run.</param>
/// <param name="Measured">The figure that was judged.</param>
/// <param name="Limit">The figure it was judged against.</param>
internal readonly record struct Violation(
    ViolationKind Kind, Severity Severity, int Index, bool IsFar = false, double Measured = 0, double Limit = 0)
{
    /// <summary>The end of a run that it is about.</summary>
    public RunEnd End => new(Index, IsFar);

    /// <summary>The other run that it is about, where there is one.</summary>
    public int Other { get; init; } = -1;
}
