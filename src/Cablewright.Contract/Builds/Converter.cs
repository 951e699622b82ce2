using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>
/// The converter that charges the low-voltage battery of a hybrid or electric vehicle in an alternator's place. Either its rated
/// current or its rated power is stated, as the vehicle's maker gives it.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Converter
{
    /// <summary>Largest lasting output current; in place of <c>ratedPower</c>.</summary>
    [Quantity(QuantityKind.Current, "1 A", "2000 A", "130 A")]
    public string? RatedCurrent { get; init; }

    /// <summary>Largest lasting output power; in place of <c>ratedCurrent</c>.</summary>
    [Quantity(QuantityKind.Power, "10 W", "50000 W", "1800 W")]
    public string? RatedPower { get; init; }

    /// <summary>The id of the battery that it charges; the first where left out.</summary>
    [Identifier("starter")]
    public string? At { get; init; }
}
