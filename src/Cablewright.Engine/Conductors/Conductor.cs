using System.Collections.Frozen;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Conductors;

/// <summary>A stranded conductor of one size and metal. There is one object for each pair.</summary>
/// <remarks>
/// R(T) = ρ₂₀ k / A · (1 + α (T − 20)), with ρ₂₀ the metal's resistivity, k the lay factor, A the metal area.
/// A tinned metric size has its own published maximum and is taken from there.
/// </remarks>
public sealed class Conductor
{
    private static readonly FrozenDictionary<(ConductorSize, Material), Conductor> Catalogue =
        (from size in ConductorSize.All
         from properties in MaterialProperties.All
         select new Conductor(size, properties)).ToFrozenDictionary(conductor => (conductor.Size, conductor.Material));

    private Conductor(ConductorSize size, MaterialProperties properties)
    {
        Size = size;
        Properties = properties;
        double ohmMm2PerMetre = properties.ResistivityOhmMm2PerMetre * Stranding.LayFactor;
        OhmsPerMetreAt20 = properties.Material is Material.TinnedCopper && size.Metric is { } metric
            ? metric.TinnedMaxOhmsPerKilometre / 1000
            : ohmMm2PerMetre / size.MetalAreaMm2;
        KilogramsPerMetre = properties.DensityKilogramsPerCubicMetre * size.MetalAreaMm2 * 1e-6 * Stranding.LayFactor;
        DiameterMetres = Math.Sqrt(4 / Math.PI * size.MetalAreaMm2 / Stranding.Fill) * 1e-3;
    }

    /// <summary>Every size in every metal.</summary>
    public static IReadOnlyList<Conductor> All => Catalogue.Values;

    /// <summary>Its size.</summary>
    public ConductorSize Size { get; }

    /// <summary>Its metal.</summary>
    public Material Material => Properties.Material;

    /// <summary>The figures of its metal.</summary>
    public MaterialProperties Properties { get; }

    /// <summary>Resistance of one metre at 20 °C, in ohms.</summary>
    public double OhmsPerMetreAt20 { get; }

    /// <summary>Area of copper that conducts as well, in mm².</summary>
    public double CopperEquivalentMm2 => Size.NominalAreaMm2
        * MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre / Properties.ResistivityOhmMm2PerMetre;

    /// <summary>Mass of the metal of one metre, in kilograms.</summary>
    public double KilogramsPerMetre { get; }

    /// <summary>Diameter of the circle around its strands, in metres.</summary>
    public double DiameterMetres { get; }

    /// <summary>The conductor of this size and metal.</summary>
    public static Conductor Of(ConductorSize size, Material material) => Catalogue[(size, material)];

    /// <inheritdoc/>
    public override string ToString() => $"{Size} {Material.InText()}";

    /// <summary>Resistance of one metre at a conductor temperature in degrees Celsius, in ohms.</summary>
    public double OhmsPerMetre(double celsius) => OhmsPerMetreAt20 * Properties.TemperatureFactor(celsius);
}
