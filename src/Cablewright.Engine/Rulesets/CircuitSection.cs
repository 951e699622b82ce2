namespace Cablewright.Engine.Rulesets;

/// <summary>The voltages between which a system works, and what its circuit must carry.</summary>
internal sealed class CircuitSection(FigureReader figures)
{
    public Figure LowestSupplyVoltage { get; } = figures.Take("circuit.lowest-supply-voltage", "V per 12 V nominal");

    public Figure HighestSupplyVoltage { get; } = figures.Take("circuit.highest-supply-voltage", "V per 12 V nominal");

    public Figure TwoBatteryThreshold { get; } = figures.Take("circuit.two-battery-threshold", "V");

    public Figure FourBatteryThreshold { get; } = figures.Take("circuit.four-battery-threshold", "V");

    public Figure SolvableOutput { get; } = figures.Take("circuit.solvable-output", "1");
}
