namespace Cablewright.Engine.Rulesets;

/// <summary>The work that variations take.</summary>
internal sealed class VariationsSection(FigureReader figures)
{
    public Figure WorkBudget { get; } = figures.Take("variations.work-budget", "runs");
}
