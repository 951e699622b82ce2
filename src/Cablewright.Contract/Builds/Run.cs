using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>A conductor, or several in parallel, between two places.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Run
{
    /// <summary>Its own name, unique among the runs. 1 to 40 letters, digits, <c>-</c> and <c>_</c>.</summary>
    [Identifier("main")]
    public required string Id { get; init; }

    /// <summary>What a person calls it; sentences of the answer use it in the place of the id.</summary>
    [Text(ContractLimits.NameLength, "Feed along the left sill")]
    public string? Name { get; init; }

    /// <summary>
    /// The place where it starts and where its fuse stands: a battery, an amplifier, a junction, <c>body</c> or <c>engine</c>.
    /// Where a run ends at <c>engine</c>, the engine block, the alternator's case sits there: what it gives comes back over the
    /// runs that join the engine with the body and with a battery's negative terminal.
    /// </summary>
    [Identifier("starter")]
    public required string From { get; init; }

    /// <summary>The place where it ends.</summary>
    [Identifier("block")]
    public required string To { get; init; }

    /// <summary>Supply or return, where the places do not tell.</summary>
    public Side? Side { get; init; }

    /// <summary>Length of the conductor.</summary>
    [Quantity(QuantityKind.Length, "0.01 m", "100 m", "16 ft")]
    public required string Length { get; init; }

    /// <summary>Where it lies.</summary>
    public Route? Route { get; init; }

    /// <summary>
    /// How much of it lies in the engine bay; the rest lies where <c>route</c> says, or in the cabin. Where neither is stated, a
    /// run from the battery that the alternator charges has its first 1.5 m there.
    /// </summary>
    [Quantity(QuantityKind.Length, "0 m", "100 m", "5 ft")]
    public string? EngineBayLength { get; init; }

    /// <summary>
    /// How much of it lies in a bundle with other conductors that carry current; the whole of it where it is left out and
    /// <c>route</c> is a loom. A bundle of up to 0.61 m takes nothing from its ampacity.
    /// </summary>
    [Quantity(QuantityKind.Length, "0 m", "100 m", "3 ft")]
    public string? BundledLength { get; init; }

    /// <summary>Resistance of its joints and terminals together.</summary>
    [Quantity(QuantityKind.Resistance, "0 mOhm", "0.1 ohm", "0.2 mOhm")]
    public string? JointResistance { get; init; }

    /// <summary>What is known of its conductor; chosen where left out.</summary>
    public Conductor? Conductor { get; init; }

    /// <summary>The fuse at its start; where left out, one is chosen if one is needed.</summary>
    public Fuse? Fuse { get; init; }

    /// <summary>The fuse at its end, for a run fed from both ends.</summary>
    public Fuse? FarFuse { get; init; }

    /// <summary>What parts the batteries at its two ends, seen from its start to its end.</summary>
    public Isolator? Isolator { get; init; }
}
