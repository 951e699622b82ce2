using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Contract.Words;

namespace Cablewright.Contract.Builds;

/// <summary>One battery.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Battery
{
    /// <summary>
    /// Its place name: its positive terminal for supply runs, its negative terminal for return runs. 1 to 40 letters, digits,
    /// <c>-</c> and <c>_</c>; <c>body</c> is taken.
    /// </summary>
    [Identifier("starter", NamesPlace = true)]
    public required string Id { get; init; }

    /// <summary>What it is made of.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Capacity at the 20-hour rate.</summary>
    [Quantity(QuantityKind.Capacity, "1 Ah", "2000 Ah", "70 Ah")]
    public string? Capacity { get; init; }

    /// <summary>Cold-cranking current (SAE J537).</summary>
    [Quantity(QuantityKind.Current, "10 A", "5000 A", "760 A")]
    public string? ColdCrankingCurrent { get; init; }

    /// <summary>Internal resistance.</summary>
    [Quantity(QuantityKind.Resistance, "0.01 mOhm", "1 ohm", "5 mOhm")]
    public string? InternalResistance { get; init; }
}
