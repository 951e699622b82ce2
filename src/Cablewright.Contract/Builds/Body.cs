using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>The vehicle's body as a conductor.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Body
{
    /// <summary>Resistance between the ground points of the amplifiers and the strap of a battery.</summary>
    [Quantity(QuantityKind.Resistance, "0 mOhm", "1 ohm", "1 mOhm")]
    public string? ReturnResistance { get; init; }
}
