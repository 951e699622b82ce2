namespace Cablewright.Engine.Rulesets;

/// <summary>The answers that are tried before a question is asked, and the work that it takes.</summary>
internal sealed class AskSection(FigureReader figures)
{
    public Figure EfficiencyHigh { get; } = figures.Take("ask.efficiency-high", "1");

    public Figure EfficiencyLow { get; } = figures.Take("ask.efficiency-low", "1");

    public Figure ChargingHigh { get; } = figures.Take("ask.charging-high", "V per 12 V nominal");

    public Figure ChargingLow { get; } = figures.Take("ask.charging-low", "V per 12 V nominal");

    public Figure InsulationHigh { get; } = figures.Take("ask.insulation-high", "C");

    public Figure InsulationLow { get; } = figures.Take("ask.insulation-low", "C");

    public Figure DistanceShort { get; } = figures.Take("ask.distance-short", "m");

    public Figure DistanceLong { get; } = figures.Take("ask.distance-long", "m");

    public Figure AlternatorHigh { get; } = figures.Take("ask.alternator-high", "A");

    public Figure AlternatorLow { get; } = figures.Take("ask.alternator-low", "A");

    public Figure InterruptingHigh { get; } = figures.Take("ask.interrupting-high", "A");

    public Figure WorkLimit { get; } = figures.Take("ask.work-limit", "runs");

    public Figure WorkBudget { get; } = figures.Take("ask.work-budget", "runs");
}
