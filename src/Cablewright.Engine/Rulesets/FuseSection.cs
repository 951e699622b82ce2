namespace Cablewright.Engine.Rulesets;

/// <summary>Which fuse stands where, and what it carries, protects and interrupts.</summary>
internal sealed class FuseSection(FigureReader figures)
{
    public Figure TerminationResistance { get; } = figures.Take("fuse.termination-resistance", "ohm");

    public Figure HotMinOfLoad { get; } = figures.Take("fuse.hot-min-of-load", "1");

    public Figure MaxOfAmpacity { get; } = figures.Take("fuse.max-of-ampacity", "1");

    public Figure InterruptingRating { get; } = figures.Take("fuse.interrupting-rating", "1");

    public Figure OpensInTime { get; } = figures.Take("fuse.opens-in-time", "1");

    public Figure Overload { get; } = figures.Take("fuse.overload", "1");

    public Figure Coordination { get; } = figures.Take("fuse.coordination", "1");

    public Figure MinOfLoad { get; } = figures.Take("fuse.min-of-load", "1");

    public Figure StandardRating { get; } = figures.Take("fuse.standard-rating", "1");

    public Figure VoltageRating { get; } = figures.Take("fuse.voltage-rating", "1");

    public Figure MaxDistance { get; } = figures.Take("fuse.max-distance", "m");

    public Figure NearDistance { get; } = figures.Take("fuse.near-distance", "m");

    public Figure AtSource { get; } = figures.Take("fuse.at-source", "1");

    public Figure AtReduction { get; } = figures.Take("fuse.at-reduction", "1");

    public Figure OnePerConductor { get; } = figures.Take("fuse.one-per-conductor", "1");

    public Figure BladeUpTo { get; } = figures.Take("fuse.blade-up-to", "A");

    public Figure NoneInReturn { get; } = figures.Take("fuse.none-in-return", "1");
}
