using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Reference;

/// <summary>One metal at 20 °C.</summary>
public sealed record MaterialEntry
{
    /// <summary>The metal.</summary>
    public required Material Material { get; init; }

    /// <summary>Resistivity, in ohm mm²/m.</summary>
    [Figure("ohm mm2/m", 0.0172414)]
    public required double ResistivityOhmMm2PerMetre { get; init; }

    /// <summary>Growth of resistance per kelvin.</summary>
    [Figure("1/K", 0.00393)]
    public required double TemperatureCoefficientPerKelvin { get; init; }

    /// <summary>Density, in kg/m³.</summary>
    [Figure("kg/m3", 8890)]
    public required double DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
