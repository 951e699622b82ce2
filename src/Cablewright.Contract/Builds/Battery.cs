using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>One battery.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Battery
{
    /// <summary>
    /// Its place name: its positive terminal for supply runs, its negative terminal for return runs. 1 to 40 letters, digits,
    /// <c>-</c> and <c>_</c>; <c>body</c> and <c>engine</c> are taken.
    /// </summary>
    [Identifier("starter", NamesPlace = true)]
    public required string Id { get; init; }

    /// <summary>What a person calls it; sentences of the answer use it in the place of the id.</summary>
    [Text(ContractLimits.NameLength, "Battery under the seat")]
    public string? Name { get; init; }

    /// <summary>What it is made of.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Capacity at its rating time, the 20-hour rate unless <c>ratingTime</c> says otherwise.</summary>
    [Quantity(QuantityKind.Capacity, "1 Ah", "2000 Ah", "70 Ah")]
    public string? Capacity { get; init; }

    /// <summary>The time in which its capacity is drawn when it is rated; 20 h where left out.</summary>
    [Quantity(QuantityKind.Duration, "0.5 h", "100 h", "20 h")]
    public string? RatingTime { get; init; }

    /// <summary>How long it gives 25 A down to 10.5 V, where that is what its label states.</summary>
    [Quantity(QuantityKind.Duration, "1 min", "5000 min", "115 min")]
    public string? ReserveCapacity { get; init; }

    /// <summary>Peukert's exponent: how much sooner it is empty under a larger current.</summary>
    [Figure("1", 1.2, Smallest = 1, Largest = 2)]
    public double? PeukertExponent { get; init; }

    /// <summary>State of charge when the engine stops.</summary>
    [Quantity(QuantityKind.Ratio, "0 %", "100 %", "100 %")]
    public string? StateOfCharge { get; init; }

    /// <summary>Share of its capacity that may be used.</summary>
    [Quantity(QuantityKind.Ratio, "1 %", "100 %", "50 %")]
    public string? UsableShare { get; init; }

    /// <summary>How its voltage settles under a load: at most two resistances, each with its time constant.</summary>
    [Items(0, ContractLimits.Polarisations)]
    public IReadOnlyList<Polarisation>? Polarisation { get; init; }

    /// <summary>Cold-cranking current (SAE J537).</summary>
    [Quantity(QuantityKind.Current, "10 A", "5000 A", "760 A")]
    public string? ColdCrankingCurrent { get; init; }

    /// <summary>Internal resistance.</summary>
    [Quantity(QuantityKind.Resistance, "0.01 mOhm", "1 ohm", "5 mOhm")]
    public string? InternalResistance { get; init; }
}
