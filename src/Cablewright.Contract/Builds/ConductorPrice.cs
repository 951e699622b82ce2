using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>What one conductor costs.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record ConductorPrice
{
    /// <summary>Its size.</summary>
    [ConductorSize]
    public required string Size { get; init; }

    /// <summary>Its metal; copper where left out.</summary>
    public Material? Material { get; init; }

    /// <summary>The price of the stated length, in the currency of <c>sizing.currency</c>; more than 0.</summary>
    [Figure("1", 4.1, Smallest = 0.0001, Largest = 1_000_000)]
    public required double Price { get; init; }

    /// <summary>The length that it is the price of.</summary>
    [Quantity(QuantityKind.Length, "0.01 m", "1000 m", "1 m")]
    public required string Per { get; init; }
}
