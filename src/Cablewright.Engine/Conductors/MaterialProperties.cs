using Cablewright.Engine.Data;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Conductors;

/// <summary>What a conductor's metal is like at 20 °C, with the source of the figures.</summary>
public sealed record MaterialProperties(
    Material Material,
    double ResistivityOhmMm2PerMetre,
    double TemperatureCoefficientPerKelvin,
    double DensityKilogramsPerCubicMetre,
    string Source,
    string Provenance)
{
    private static readonly MaterialProperties[] Table = ReadTable();

    /// <summary>All metals, in the order of <see cref="Vocabulary.Material"/>.</summary>
    public static IReadOnlyList<MaterialProperties> All => Table;

    /// <summary>The properties of one metal.</summary>
    public static MaterialProperties Of(Material material) => Table[(int)material];

    /// <summary>Resistance at a temperature over resistance at 20 °C.</summary>
    public double TemperatureFactor(double celsius) => 1 + TemperatureCoefficientPerKelvin * (celsius - 20);

    private static MaterialProperties[] ReadTable() =>
        [.. Embedded.Read("Conductors/materials.json", ConductorsJson.Default.MaterialRowArray)
            .Select(row => new MaterialProperties(
                TradeWords.Parse<Material>(row.Name),
                row.ResistivityOhmMm2PerMetre,
                row.TemperatureCoefficientPerKelvin,
                row.DensityKilogramsPerCubicMetre,
                row.Source,
                row.Provenance))
            .OrderBy(properties => properties.Material)];
}

internal sealed record MaterialRow(
    string Name,
    double ResistivityOhmMm2PerMetre,
    double TemperatureCoefficientPerKelvin,
    double DensityKilogramsPerCubicMetre,
    string Source,
    string Provenance);
