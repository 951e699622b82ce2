using Cablewright.Engine.Data;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>The constants by which a conductor withstands a short circuit, of IEC 60364-5-54 and IEC 60853-2.</summary>
public sealed class ShortCircuitConstants
{
    private readonly double copperHeat;
    private readonly double copperBeta;
    private readonly double aluminiumHeat;
    private readonly double aluminiumBeta;

    internal ShortCircuitConstants(NamedFigure[] figures)
    {
        Figures = figures;
        copperHeat = figures.Named("copper-heat");
        copperBeta = figures.Named("copper-beta");
        aluminiumHeat = figures.Named("aluminium-heat");
        aluminiumBeta = figures.Named("aluminium-beta");
        InsulationHeat = figures.Named("insulation-heat");
    }

    /// <summary>All of them, with their sources.</summary>
    public IReadOnlyList<NamedFigure> Figures { get; }

    /// <summary>Volumetric heat of the insulation, J/(K m³).</summary>
    public double InsulationHeat { get; }

    /// <summary>Volumetric heat of a conductor's metal, a clad one's counting as its core, J/(K mm³).</summary>
    public double HeatOf(Material metal) => IsCopper(metal) ? copperHeat : aluminiumHeat;

    /// <summary>Its reciprocal temperature coefficient of resistance at 0 °C, °C.</summary>
    public double BetaOf(Material metal) => IsCopper(metal) ? copperBeta : aluminiumBeta;

    private static bool IsCopper(Material metal) => metal is Material.Copper or Material.TinnedCopper;
}
