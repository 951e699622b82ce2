namespace Cablewright.Engine.Rulesets;

/// <summary>What fits a terminal.</summary>
internal sealed class TerminalSection(FigureReader figures)
{
    public Figure LargestConductor { get; } = figures.Take("terminal.largest-conductor", "1");
}
