using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>The area by one way.</summary>
/// <param name="Way">The way.</param>
/// <param name="AreaMm2">The area, in mm².</param>
public sealed record AreaByWay(AuditWay Way, Interval AreaMm2);

/// <summary>Whether a cable can be of a metal.</summary>
/// <param name="Material">The metal.</param>
/// <param name="IsPossible">Whether all measurements allow it.</param>
public sealed record MetalCandidate(Material Material, bool IsPossible);

/// <summary>What a conductor of the true size and metal may carry continuously.</summary>
/// <param name="AirCelsius">The surroundings, in degrees Celsius.</param>
/// <param name="Amps">The figure at the estimated area; <c>null</c> outside the sizes known here.</param>
/// <param name="LeastAmps">The figure at the least area that the measurements allow.</param>
/// <param name="ClaimedAmps">The figure of the claimed size and metal, where both are known.</param>
public sealed record TrueAmpacity(double AirCelsius, double? Amps, double? LeastAmps, double? ClaimedAmps);

/// <summary>What a cable truly is. Numbers are unrounded.</summary>
public sealed record CableAudit
{
    /// <summary>How it stands to its label; <c>null</c> where nothing is claimed.</summary>
    public required AuditVerdict? Verdict { get; init; }

    /// <summary>Two or three plain sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    public required string Ruleset { get; init; }

    /// <summary>The area by each way.</summary>
    public required IReadOnlyList<AreaByWay> Areas { get; init; }

    /// <summary>The area by all ways together, in mm².</summary>
    public required Interval AreaMm2 { get; init; }

    /// <summary>
    /// The AWG number as a real number, 0 for 1/0 AWG and -3 for 4/0; its least value belongs to the most area.
    /// </summary>
    public required Interval Gauge { get; init; }

    /// <summary>Shortfall against the claimed size as a fraction of it, negative for more than was claimed.</summary>
    public required Interval? Shortfall { get; init; }

    /// <summary>Each metal, and whether the cable can be of it.</summary>
    public required IReadOnlyList<MetalCandidate> Metals { get; init; }

    /// <summary>The metal that the figures are worked out for.</summary>
    public required Material Material { get; init; }

    /// <summary>Whether it can be copper, bare or tinned; <c>null</c> where one way alone was measured.</summary>
    public required bool? CanBeCopper { get; init; }

    /// <summary>Conductivity in percent of the copper standard, where strands and resistance are known.</summary>
    public required Interval? ConductivityPercentIacs { get; init; }

    /// <summary>Density in kg/m³, where strands and mass are known.</summary>
    public required Interval? DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Resistance times mass for each metre squared, in ohm g/m², where both are known: 0.15328 for copper.</summary>
    public required Interval? MassResistivityOhmGramsPerSquareMetre { get; init; }

    /// <summary>Area of copper that conducts as well, in mm².</summary>
    public required double CopperEquivalentMm2 { get; init; }

    /// <summary>The largest gauge that it may honestly be sold as; <c>null</c> below 22 AWG.</summary>
    public required ConductorSize? SoldAsGauge { get; init; }

    /// <summary>The largest metric size likewise; <c>null</c> below 0.5 mm².</summary>
    public required ConductorSize? SoldAsMetric { get; init; }

    /// <summary>Its ampacity in the cabin and in the engine bay.</summary>
    public required IReadOnlyList<TrueAmpacity> Ampacities { get; init; }

    /// <summary>What was found, the worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Everything that was not stated and was therefore assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
