using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>
/// What was measured of a cable on the bench, in SI units; at least one of strands, resistance and mass. An uncertainty that is
/// <c>null</c> was not stated; it is taken from the ruleset and listed among the assumptions.
/// </summary>
public sealed record BenchReport
{
    /// <summary>The units in which the answer's sentences are written.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>The strands, counted and measured.</summary>
    public StrandMeasurement? Strands { get; init; }

    /// <summary>The resistance of a length.</summary>
    public ResistanceMeasurement? Resistance { get; init; }

    /// <summary>The mass of a length, without insulation.</summary>
    public MassMeasurement? Mass { get; init; }

    /// <summary>The size on the label, or <c>null</c>.</summary>
    public ConductorSize? ClaimedSize { get; init; }

    /// <summary>The metal on the label, or <c>null</c>.</summary>
    public Material? ClaimedMaterial { get; init; }

    /// <summary>Temperature rating of the insulation, in degrees Celsius, 60 to 125.</summary>
    public double? InsulationCelsius { get; init; }
}

/// <summary>A measured figure.</summary>
/// <param name="Value">The reading, above 0.</param>
/// <param name="Uncertainty">How far off it may be either way, in the same unit.</param>
/// <param name="RelativeUncertainty">The same as a share of the reading.</param>
public sealed record Reading(double Value, double? Uncertainty = null, double? RelativeUncertainty = null);

/// <summary>The strands of a cable.</summary>
/// <param name="Count">How many, one for a solid wire; its uncertainty is relative.</param>
/// <param name="DiameterMetres">Diameter of one bare strand.</param>
public sealed record StrandMeasurement(Reading Count, Reading DiameterMetres);

/// <summary>The resistance of a length of cable.</summary>
/// <param name="Ohms">The resistance between its ends.</param>
/// <param name="LengthMetres">The length between the points of measurement.</param>
/// <param name="Celsius">The conductor's temperature, or <c>null</c>.</param>
/// <param name="CelsiusUncertainty">How far off that may be, in kelvin.</param>
public sealed record ResistanceMeasurement(
    Reading Ohms, Reading LengthMetres, double? Celsius = null, double? CelsiusUncertainty = null);

/// <summary>The mass of a length of bare conductor.</summary>
/// <param name="Kilograms">The mass.</param>
/// <param name="LengthMetres">The length of cable that it was taken from.</param>
public sealed record MassMeasurement(Reading Kilograms, Reading LengthMetres);
