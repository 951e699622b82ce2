namespace Cablewright.Engine.Rulesets;

/// <summary>The work that changes take.</summary>
internal sealed class ChangesSection(FigureReader figures)
{
    public Figure WorkBudget { get; } = figures.Take("changes.work-budget", "runs");
}
