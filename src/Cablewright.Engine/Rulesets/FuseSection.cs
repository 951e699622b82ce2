using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>Which fuse stands where, and what it carries, protects and interrupts.</summary>
internal sealed class FuseSection(FigureReader figures)
{
    public Figure TerminationResistance { get; } = figures.Take("fuse.termination-resistance", "ohm");

    public Figure HotMinOfLoad { get; } = figures.Take("fuse.hot-min-of-load", "1");

    public Figure MaxOfAmpacity { get; } = figures.Take("fuse.max-of-ampacity", "1");

    /// <summary>The same, at most.</summary>
    public Figure MostOfAmpacity { get; } = figures.Take("fuse.most-of-ampacity", "1");

    public Figure InterruptingRating { get; } = figures.Take("fuse.interrupting-rating", "1");

    /// <summary>The cold-cranking current up to which the first of them holds.</summary>
    public Figure InterruptingSmallBank { get; } = figures.Take("fuse.interrupting-small-bank", "A");

    /// <summary>The same, the second.</summary>
    public Figure InterruptingMiddleBank { get; } = figures.Take("fuse.interrupting-middle-bank", "A");

    /// <summary>The same, the third.</summary>
    public Figure InterruptingLargestBank { get; } = figures.Take("fuse.interrupting-largest-bank", "A");

    /// <summary>Interrupting rating by the cold-cranking current of the batteries.</summary>
    public Figure InterruptingTo650 { get; } = figures.Take("fuse.interrupting-to-650", "A");

    /// <summary>Interrupting rating by the cold-cranking current of the batteries.</summary>
    public Figure InterruptingTo1100 { get; } = figures.Take("fuse.interrupting-to-1100", "A");

    /// <summary>Interrupting rating by the cold-cranking current of the batteries.</summary>
    public Figure InterruptingAbove1100 { get; } = figures.Take("fuse.interrupting-above-1100", "A");

    /// <summary>Interrupting rating by the cold-cranking current of the batteries.</summary>
    public Figure InterruptingPlugIn { get; } = figures.Take("fuse.interrupting-plug-in", "A");

    /// <summary>What of it a fuse behind the battery fuse needs.</summary>
    public Figure InterruptingBranchShare { get; } = figures.Take("fuse.interrupting-branch-share", "1");

    public Figure OpensInTime { get; } = figures.Take("fuse.opens-in-time", "1");

    /// <summary>Below this share of its rating no fuse of any family is certain to open.</summary>
    public Figure CertainOpening { get; } = figures.Take("fuse.certain-opening", "1");

    public Figure Overload { get; } = figures.Take("fuse.overload", "1");

    public Figure Coordination { get; } = figures.Take("fuse.coordination", "1");

    public Figure MinOfLoad { get; } = figures.Take("fuse.min-of-load", "1");

    /// <summary>How long a fuse holds full output.</summary>
    public Figure HoldsNote { get; } = figures.Take("fuse.holds-note", "s");

    /// <summary>Rating of the fuse at the battery over the amplifiers' own.</summary>
    public Figure OwnFuses { get; } = figures.Take("fuse.own-fuses", "1");

    public Figure StandardRating { get; } = figures.Take("fuse.standard-rating", "1");

    public Figure VoltageRating { get; } = figures.Take("fuse.voltage-rating", "1");

    public Figure MaxDistance { get; } = figures.Take("fuse.max-distance", "m");

    public Figure NearDistance { get; } = figures.Take("fuse.near-distance", "m");

    public Figure AtSource { get; } = figures.Take("fuse.at-source", "1");

    public Figure AtReduction { get; } = figures.Take("fuse.at-reduction", "1");

    public Figure OnePerConductor { get; } = figures.Take("fuse.one-per-conductor", "1");

    /// <summary>The largest rating in which a fuse that is left open is of a family.</summary>
    public double ChosenUpTo(FuseFamilyName family) => family switch
    {
        FuseFamilyName.BladeC => BladeUpTo.Value,
        FuseFamilyName.MiniAnl => SmallStripUpTo.Value,
        _ => double.PositiveInfinity,
    };

    private Figure BladeUpTo { get; } = figures.Take("fuse.blade-up-to", "A");

    private Figure SmallStripUpTo { get; } = figures.Take("fuse.small-strip-up-to", "A");

    public Figure NoneInReturn { get; } = figures.Take("fuse.none-in-return", "1");
}
