using Cablewright.Contract.Assessments;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Audits;

/// <summary>What a cable truly is.</summary>
public sealed record ConductorAudit
{
    /// <summary>How it stands to its label; absent where nothing is claimed.</summary>
    public AuditVerdict? Verdict { get; init; }

    /// <summary>Two or three plain sentences that can be read out.</summary>
    [Example("The cable holds 17.7 mm2 of metal, 4.8 AWG, between 17.2 and 18.3 mm2. It can be copper.")]
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    [Example("2026.2")]
    public required string Ruleset { get; init; }

    /// <summary>The version of the computation.</summary>
    [Example("1.0.0")]
    public required string EngineVersion { get; init; }

    /// <summary>The area by each way that was measured, for the metal that is taken, in mm².</summary>
    public required IReadOnlyList<AreaByWay> Areas { get; init; }

    /// <summary>The area that all ways have in common, in mm².</summary>
    public required Bounds AreaMm2 { get; init; }

    /// <summary>
    /// The gauge as a real number: 5.3 is a third of the way from 5 to 6 AWG, 0 is 1/0 AWG, -3 is 4/0 AWG. Its least value
    /// belongs to the most area.
    /// </summary>
    public required Bounds Gauge { get; init; }

    /// <summary>Shortfall against the area of the claimed size, in percent; negative where more is there.</summary>
    public Bounds? ShortfallPercent { get; init; }

    /// <summary>The metal that the figures are worked out for.</summary>
    public required Material Material { get; init; }

    /// <summary>Each metal, and whether all measurements allow it.</summary>
    public required IReadOnlyList<MetalCandidate> Metals { get; init; }

    /// <summary>Whether it can be copper, bare or tinned; absent where that was not tested.</summary>
    [Example(true)]
    public bool? CanBeCopper { get; init; }

    /// <summary>Conductivity in percent of the copper standard (IACS), where strands and resistance are known.</summary>
    public Bounds? ConductivityPercentIacs { get; init; }

    /// <summary>Density in g/cm³, where strands and mass are known; copper has 8.89.</summary>
    public Bounds? DensityGramsPerCm3 { get; init; }

    /// <summary>Mass resistivity in ohm g/m², where resistance and mass are known; copper has 0.15328.</summary>
    public Bounds? MassResistivityOhmGramsPerM2 { get; init; }

    /// <summary>Area of copper that conducts as well, in mm².</summary>
    [Figure("mm2", 11.4)]
    public required double CopperEquivalentMm2 { get; init; }

    /// <summary>The largest gauge that it may honestly be sold as; absent below 22 AWG.</summary>
    [Example("6 AWG")]
    public string? SoldAsGauge { get; init; }

    /// <summary>The largest metric size that it may honestly be sold as; absent below 0.5 mm².</summary>
    [Example("16 mm2")]
    public string? SoldAsMetric { get; init; }

    /// <summary>What it may carry without end, in the cabin and in the engine bay.</summary>
    public required IReadOnlyList<TrueAmpacity> Ampacities { get; init; }

    /// <summary>What was found, the worst first; pointers lead into the request.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Everything that was not stated and was therefore assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
