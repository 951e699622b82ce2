namespace Cablewright.Engine.Rulesets;

/// <summary>The work that many kits take.</summary>
internal sealed class KitsSection(FigureReader figures)
{
    public Figure TrialBudget { get; } = figures.Take("kits.trial-budget", "1");
}
