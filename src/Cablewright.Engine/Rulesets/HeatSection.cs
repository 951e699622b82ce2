namespace Cablewright.Engine.Rulesets;

/// <summary>Surroundings, insulation, ampacity and the temperatures of short circuits and overloads.</summary>
internal sealed class HeatSection(FigureReader figures)
{
    public Figure EngineBay { get; } = figures.Take("heat.engine-bay", "C");

    public Figure Cabin { get; } = figures.Take("heat.cabin", "C");

    public Figure Underbody { get; } = figures.Take("heat.underbody", "C");

    public Figure LoomFactor { get; } = figures.Take("heat.loom-factor", "1");

    /// <summary>A bundle no longer than this takes nothing from ampacity.</summary>
    public Figure BundleLength { get; } = figures.Take("heat.bundle-length", "m");

    public Figure InsulationRating { get; } = figures.Take("heat.insulation-rating", "C");

    public Figure TableSurroundings { get; } = figures.Take("heat.table-surroundings", "C");

    public Figure TableReach { get; } = figures.Take("heat.table-reach", "C");

    public Figure MaxOfAmpacity { get; } = figures.Take("heat.max-of-ampacity", "1");

    public Figure OverloadMargin { get; } = figures.Take("heat.overload-margin", "K");

    /// <summary>The temperature of conductors at the end of a short circuit, at most.</summary>
    /// <param name="insulationCelsius">What their insulation is rated for.</param>
    public Figure ShortCircuitLimitOf(double insulationCelsius) =>
        insulationCelsius >= 125 ? ShortCircuitLimit125 : ShortCircuitLimit;

    private Figure ShortCircuitLimit { get; } = figures.Take("heat.short-circuit-limit", "C");

    private Figure ShortCircuitLimit125 { get; } = figures.Take("heat.short-circuit-limit-125", "C");
}
