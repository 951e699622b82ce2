using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Kits;

/// <summary>One part of a kit. What a part of its kind does not have is left out.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record KitPart
{
    /// <summary>What it is.</summary>
    public required KitPartKind Kind { get; init; }

    /// <summary>Conductor size: a cable's own as labelled, or the one that a terminal is made for.</summary>
    [ConductorSize]
    public string? Size { get; init; }

    /// <summary>A cable's metal.</summary>
    public Material? Material { get; init; }

    /// <summary>Length of each piece of cable or loom.</summary>
    [Quantity(QuantityKind.Length, "0.01 m", "100 m", "17 ft")]
    public string? Length { get; init; }

    /// <summary>How many strands a cable has; with their diameter its true size follows.</summary>
    [Figure("1", 1862, Smallest = 1, Largest = ContractLimits.Strands)]
    public int? StrandCount { get; init; }

    /// <summary>Diameter of one strand.</summary>
    [Quantity(QuantityKind.Length, "0.02 mm", "10 mm", "0.12 mm")]
    public string? StrandDiameter { get; init; }

    /// <summary>Temperature rating of a cable's insulation.</summary>
    [Quantity(QuantityKind.Temperature, "60 C", "125 C", "105 C")]
    public string? InsulationRating { get; init; }

    /// <summary>Its colour, in a word or two. At most 30 characters.</summary>
    [Text(ContractLimits.ColourLength, "red")]
    public string? Colour { get; init; }

    /// <summary>A fuse's rated current.</summary>
    [Quantity(QuantityKind.Current, "0.5 A", "2000 A", "100 A")]
    public string? Rating { get; init; }

    /// <summary>The family that a fuse belongs to.</summary>
    public FuseFamilyName? Family { get; init; }

    /// <summary>The largest conductor that a fuse holder or a distribution block accepts.</summary>
    [ConductorSize]
    public string? LargestConductor { get; init; }

    /// <summary>How many conductors leave a distribution block.</summary>
    [Figure("1", 4, Smallest = 1, Largest = ContractLimits.BlockWays)]
    public int? Ways { get; init; }

    /// <summary>How many of it; one where left out.</summary>
    [Figure("1", 1, Smallest = 1, Largest = ContractLimits.PartCount)]
    public int? Count { get; init; }

    /// <summary>What the part costs by itself, in the kit's currency.</summary>
    [Figure("see currency", 9.5, Smallest = 0, Largest = ContractLimits.HighestPrice)]
    public double? Price { get; init; }
}
