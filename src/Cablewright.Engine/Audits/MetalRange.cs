using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>Within which bounds the figures of one metal lie, as it is drawn into wire.</summary>
/// <param name="Properties">Its usual figures.</param>
/// <param name="ResistivityOhmMm2PerMetre">Resistivity at 20 °C.</param>
/// <param name="DensityKilogramsPerCubicMetre">Density.</param>
/// <param name="Source">Where the bounds come from.</param>
internal sealed record MetalRange(
    MaterialProperties Properties, Interval ResistivityOhmMm2PerMetre, Interval DensityKilogramsPerCubicMetre, string Source)
{
    private static readonly MetalRange[] Table =
        [.. Embedded.Read("Audits/metals.json", AuditsJson.Default.MetalRangeRowArray).Select(Read)
            .OrderBy(range => range.Material)];

    /// <summary>All metals, in the order of <see cref="Vocabulary.Material"/>.</summary>
    public static IReadOnlyList<MetalRange> All => Table;

    public Material Material => Properties.Material;

    /// <summary>Bare or tinned: what the trade means by a copper cable.</summary>
    public bool IsCopper => Material is Material.Copper or Material.TinnedCopper;

    public static MetalRange Of(Material material) => Table[(int)material];

    private static MetalRange Read(MetalRangeRow row)
    {
        MaterialProperties usual = MaterialProperties.Of(TradeWords.Parse<Material>(row.Name));
        return new MetalRange(
            usual,
            new Interval(
                usual.ResistivityOhmMm2PerMetre, row.LeastResistivityOhmMm2PerMetre, row.MostResistivityOhmMm2PerMetre),
            new Interval(
                usual.DensityKilogramsPerCubicMetre,
                row.LeastDensityKilogramsPerCubicMetre,
                row.MostDensityKilogramsPerCubicMetre),
            row.Provenance is "read" or "computed" ? row.Source : $"{row.Source} ({row.Provenance})");
    }
}

internal sealed record MetalRangeRow(
    string Name,
    double LeastResistivityOhmMm2PerMetre,
    double MostResistivityOhmMm2PerMetre,
    double LeastDensityKilogramsPerCubicMetre,
    double MostDensityKilogramsPerCubicMetre,
    string Source,
    string Provenance);
