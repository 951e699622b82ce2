using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>What the choice of conductors goes by.</summary>
internal sealed class SizingSection(FigureReader figures)
{
    /// <summary>How many conductors of the largest size kept in stock may lie in parallel.</summary>
    public Figure StockedParallel { get; } = figures.Take("sizing.stocked-parallel", "1");

    /// <summary>Price of a kilogram of a metal in conductors over that of copper.</summary>
    public Figure RelativePrice(Material material) => material switch
    {
        Material.Copper => RelativePriceCopper,
        Material.TinnedCopper => RelativePriceTinnedCopper,
        Material.CopperCladAluminium => RelativePriceCopperCladAluminium,
        _ => RelativePriceAluminium,
    };

    /// <summary>What every terminal costs, over a kilogram of copper in conductors.</summary>
    public Figure TerminalPrice { get; } = figures.Take("sizing.relative-price-terminal", "1");

    /// <summary>And how many metres of copper conductor of its size besides.</summary>
    public Figure TerminalMetres { get; } = figures.Take("sizing.terminal-metres", "m");

    private Figure RelativePriceCopper { get; } = figures.Take("sizing.relative-price-copper", "1");

    private Figure RelativePriceTinnedCopper { get; } = figures.Take("sizing.relative-price-tinned-copper", "1");

    private Figure RelativePriceCopperCladAluminium { get; } = figures.Take("sizing.relative-price-copper-clad-aluminium", "1");

    private Figure RelativePriceAluminium { get; } = figures.Take("sizing.relative-price-aluminium", "1");
}
