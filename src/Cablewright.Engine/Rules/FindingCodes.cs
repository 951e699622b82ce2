using System.Collections.Frozen;

namespace Cablewright.Engine.Rules;

/// <summary>One kind of finding.</summary>
/// <param name="Code">Its stable code.</param>
/// <param name="Meaning">What it says.</param>
public sealed record FindingCode(string Code, string Meaning);

/// <summary>Every kind of finding that an answer can carry.</summary>
public static class FindingCodes
{
    private static readonly FrozenDictionary<ViolationKind, (string Code, string Rule, string Meaning)> Table =
        new Dictionary<ViolationKind, (string, string, string)>
        {
            [ViolationKind.VoltageCollapse] = (
                "circuit.voltage-collapse", "circuit.solvable-output",
                "The wiring cannot carry the rated output at any voltage; the largest output that it can carry is given."),
            [ViolationKind.DropOverLimit] = (
                "amplifier.drop-over-limit", "drop.limit",
                "More voltage is lost on the way to the amplifier and back than the limit allows."),
            [ViolationKind.DropOverTarget] = (
                "amplifier.drop-over-target", "drop.target",
                "More voltage is lost on the way to the amplifier and back than the design target allows."),
            [ViolationKind.OverAmpacity] = (
                "run.over-ampacity", "heat.max-of-ampacity",
                "The conductor carries more than it may without end in its surroundings."),
            [ViolationKind.SurroundingsTooHot] = (
                "run.surroundings-above-insulation", "heat.max-of-ampacity",
                "The surroundings are as hot as the insulation may be, so the conductor may carry nothing."),
            [ViolationKind.FuseMissingAtBattery] = (
                "fuse.missing-at-battery", "fuse.at-source", "A battery feeds the run with no fuse between."),
            [ViolationKind.FuseMissingAtReduction] = (
                "fuse.missing-at-reduction", "fuse.at-reduction",
                "The conductor is smaller than the one before it, and the fuses before it let through more than it bears."),
            [ViolationKind.FuseAboveConductor] = (
                "fuse.above-conductor-rating", "fuse.max-of-ampacity",
                "The fuse lets through more than the conductor behind it bears."),
            [ViolationKind.NoFuseFits] = (
                "run.no-fuse-fits", "fuse.max-of-ampacity",
                "No standard fuse carries the load and still protects the conductor: the conductor is too small."),
            [ViolationKind.ParallelUnprotected] = (
                "run.parallel-unguarded", "fuse.one-per-conductor",
                "Parallel conductors share a fuse that is too large for one of them alone."),
            [ViolationKind.FuseBelowLoad] = ("fuse.below-load", "fuse.min-of-load", "The fuse will open in normal use."),
            [ViolationKind.FuseNotStandard] = (
                "fuse.not-standard-rating", "fuse.standard-rating", "The fuse family is not made in this rating."),
            [ViolationKind.FuseVoltageTooLow] = (
                "fuse.voltage-rating-too-low", "fuse.voltage-rating", "The fuse is not rated for the highest system voltage."),
            [ViolationKind.FuseTooFar] = (
                "fuse.too-far-from-source", "fuse.max-distance",
                "Too much conductor lies unguarded between the source and its fuse."),
            [ViolationKind.FuseNotNear] = (
                "fuse.not-near-source", "fuse.near-distance",
                "The fuse is within the limit, but stricter rules ask for it nearer."),
            [ViolationKind.FuseChosen] = (
                "fuse.must-be-fitted", "fuse.at-source", "A fuse was left out and one is needed: it must be fitted."),
            [ViolationKind.FuseInReturn] = ("fuse.in-return", "fuse.none-in-return", "A fuse stands in a return."),
            [ViolationKind.ReturnBelowSupply] = (
                "amplifier.return-below-supply", "return.not-below-supply",
                "The amplifier's return conducts worse than its supply."),
            [ViolationKind.TerminalTooSmall] = (
                "run.larger-than-terminal", "terminal.largest-conductor",
                "The conductor does not fit a terminal that it ends in."),
            [ViolationKind.RatingAboveOnBoardFuse] = (
                "amplifier.rating-above-fuse", "load.on-board-fuse",
                "The amplifier's own fuses do not carry what its rated output would draw."),
            [ViolationKind.SupplyNotCharged] = (
                "amplifier.supply-not-charged", "supply.charging-reach",
                "The amplifier hangs on a battery that nothing charges."),
            [ViolationKind.AverageAboveAlternator] = (
                "supply.average-above-alternator", "supply.average-of-available",
                "On its programme the system draws more than the alternator has left: the battery empties while driving."),
            [ViolationKind.PeakAboveAlternator] = (
                "supply.peak-above-alternator", "supply.average-of-available",
                "At full output the system draws more than the alternator has left; the battery gives the rest for as long."),
            [ViolationKind.AverageAboveIdle] = (
                "supply.average-above-idle", "supply.average-of-available",
                "At idle the system draws more than the alternator has left."),
            [ViolationKind.AverageAboveCharger] = (
                "supply.average-above-charger", "supply.average-of-available",
                "What hangs on a battery draws more on average than the charger before it gives: that battery empties."),
            [ViolationKind.PeakAboveConverter] = (
                "supply.peak-above-converter", "supply.converter-limit",
                "At full output more is drawn than the vehicle's converter gives, and it may shut down."),
            [ViolationKind.FullOutputNotHeld] = (
                "supply.full-output-not-held", "supply.full-output-voltage",
                "Alternator and batteries together cannot hold full output: the amplifiers cut out."),
            [ViolationKind.VoltageLowAtFullOutput] = (
                "supply.voltage-low-at-full-output", "supply.full-output-voltage",
                "At full output the batteries have to help and an amplifier's voltage falls low."),
            [ViolationKind.EngineOffTooShort] = (
                "supply.engine-off-too-short", "limits.engineOffTime",
                "With the engine off the batteries reach their limit before the time that the build asks for."),
            [ViolationKind.MixedChemistries] = (
                "supply.mixed-chemistries", "supply.one-chemistry",
                "Lead-acid and lithium batteries are tied together without a charger between them."),
            [ViolationKind.CapacitorHoldsBriefly] = (
                "supply.capacitor-holds-briefly", "supply.capacitor-help",
                "The capacitor is empty long before a bass note ends."),
            [ViolationKind.IsolatorOverRated] = (
                "isolator.over-rating", "isolator.max-of-rating", "The isolator carries more than it is rated for."),
            [ViolationKind.IsolatorUnrated] = (
                "isolator.rating-unknown", "isolator.max-of-rating", "Nothing says what the isolator may carry."),
            [ViolationKind.AlternatorCableUnprotected] = (
                "fuse.missing-at-alternator-cable", "alternator.cable-guard",
                "The alternator's own cable has no fuse at the battery."),
            [ViolationKind.AlternatorDropLarge] = (
                "alternator.cable-drop-large", "alternator.cable-drop",
                "Much voltage is lost in the alternator's own cable at its rated current."),
            [ViolationKind.FuseHotBelowLoad] = (
                "fuse.below-load-when-hot", "fuse.hot-min-of-load",
                "The fuse carries the load at room temperature, but not for long where it stands."),
            [ViolationKind.SharedReturnBelowSupply] = (
                "return.shared-below-supply", "return.shared-not-below-supply",
                "A return that several amplifiers share conducts worse than what supplies them."),
            [ViolationKind.FuseMayNotOpen] = (
                "fuse.may-not-open", "fuse.opens-in-time",
                "The smallest short-circuit current is too small for the fuse to open with certainty."),
            [ViolationKind.FuseClearsTooLate] = (
                "fuse.opens-too-late", "fuse.opens-in-time",
                "The conductor is hurt before the fuse opens on the smallest short-circuit current."),
            [ViolationKind.BandRecalled] = (
                "fuse.band-from-memory", "fuse.opens-in-time",
                "The fuse opens in time by a time-current band that is only recalled: check the part's own."),
            [ViolationKind.InterruptingUnknown] = (
                "fuse.interrupting-rating-unknown", "fuse.interrupting-rating",
                "The largest short-circuit current is above what the fuse family is known to interrupt, "
                + "and the part's own rating is not stated."),
            [ViolationKind.InterruptingTooLow] = (
                "fuse.interrupting-rating-too-low", "fuse.interrupting-rating",
                "The fuse cannot interrupt the largest short-circuit current."),
            [ViolationKind.OverloadHurts] = (
                "fuse.overload-hurts-conductor", "fuse.overload",
                "On a moderate overload the conductor gets too hot before the fuse opens."),
            [ViolationKind.NotSelective] = (
                "fuse.not-selective", "fuse.coordination", "In a short circuit the fuse before may open first."),
            [ViolationKind.BodyDropLarge] = (
                "return.body-drop-large", "return.body-drop", "Much voltage is lost in the body and the battery's strap."),
            [ViolationKind.BudgetReached] = (
                "sizing.budget-reached", "sizing.work-budget",
                "The work budget ended before the choice of the open conductors was finished."),
        }.ToFrozenDictionary();

    /// <summary>Those of an assessment, by code.</summary>
    public static IReadOnlyList<FindingCode> OfAssessments { get; } =
        [.. Table.Values.Select(row => new FindingCode(row.Code, row.Meaning))
            .OrderBy(code => code.Code, StringComparer.Ordinal)];

    /// <summary>All of them, by code: of assessments, of audits and of kits.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
        [.. OfAssessments.Concat(AuditCodes.All).Concat(KitCodes.All).OrderBy(code => code.Code, StringComparer.Ordinal)];

    internal static string CodeOf(ViolationKind kind) => Table[kind].Code;

    internal static string RuleOf(ViolationKind kind) => Table[kind].Rule;
}
