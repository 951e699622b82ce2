namespace Cablewright.Engine.Rulesets;

/// <summary>How much voltage may be lost between battery and amplifier.</summary>
internal sealed class DropSection(FigureReader figures)
{
    public Figure Target { get; } = figures.Take("drop.target", "1");

    /// <summary>Up to here it is no more than worth knowing.</summary>
    public Figure Clean { get; } = figures.Take("drop.clean", "1");

    public Figure Limit { get; } = figures.Take("drop.limit", "1");

    public Figure UnavoidableMargin { get; } = figures.Take("drop.unavoidable-margin", "1");
}
