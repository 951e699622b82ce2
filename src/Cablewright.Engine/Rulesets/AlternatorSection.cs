namespace Cablewright.Engine.Rulesets;

/// <summary>The alternator's own cable.</summary>
internal sealed class AlternatorSection(FigureReader figures)
{
    public Figure CableDrop { get; } = figures.Take("alternator.cable-drop", "V per 12 V nominal");

    public Figure CableGuard { get; } = figures.Take("alternator.cable-guard", "1");
}
