namespace Cablewright.Engine.Rulesets;

/// <summary>How far off may be what a build states, where it does not say.</summary>
internal sealed class ToleranceSection(FigureReader figures)
{
    public Figure Efficiency { get; } = figures.Take("tolerance.efficiency", "1");

    public Figure ChargingVoltage { get; } = figures.Take("tolerance.charging-voltage", "V per 12 V nominal");

    public Figure Length { get; } = figures.Take("tolerance.length", "1");

    public Figure Surroundings { get; } = figures.Take("tolerance.surroundings", "K");
}
