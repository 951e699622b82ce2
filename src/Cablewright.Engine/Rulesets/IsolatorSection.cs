namespace Cablewright.Engine.Rulesets;

/// <summary>What parts two batteries.</summary>
internal sealed class IsolatorSection(FigureReader figures)
{
    public Figure ContactResistance { get; } = figures.Take("isolator.contact-resistance", "ohm");

    public Figure DiodeFall { get; } = figures.Take("isolator.diode-fall", "V");

    public Figure ChargerOutput { get; } = figures.Take("isolator.charger-output", "V per 12 V nominal");

    public Figure ChargerEfficiency { get; } = figures.Take("isolator.charger-efficiency", "1");

    public Figure MaxOfRating { get; } = figures.Take("isolator.max-of-rating", "1");
}
