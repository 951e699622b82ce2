namespace Cablewright.Engine.Rulesets;

/// <summary>What a cable must hold of its claim, and how far off measurements may be where it is not stated.</summary>
internal sealed class AuditSection(FigureReader figures)
{
    public Figure LeastOfClaim { get; } = figures.Take("audit.least-of-claim", "1");

    public Figure Metal { get; } = figures.Take("audit.metal", "1");

    public Figure LayTolerance { get; } = figures.Take("audit.lay-tolerance", "1");

    public Figure CountUncertainty { get; } = figures.Take("audit.count-uncertainty", "1");

    public Figure DiameterUncertainty { get; } = figures.Take("audit.diameter-uncertainty", "m");

    public Figure ResistanceUncertainty { get; } = figures.Take("audit.resistance-uncertainty", "1");

    public Figure LengthUncertainty { get; } = figures.Take("audit.length-uncertainty", "1");

    public Figure MassUncertainty { get; } = figures.Take("audit.mass-uncertainty", "1");

    public Figure Temperature { get; } = figures.Take("audit.temperature", "C");

    public Figure TemperatureUncertainty { get; } = figures.Take("audit.temperature-uncertainty", "K");

    public Figure UnstatedTemperatureUncertainty { get; } = figures.Take("audit.unstated-temperature-uncertainty", "K");
}
