using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>A wiring kit as a shop sells it.</summary>
/// <param name="Sku">The shop's own number for it, where it has one.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Price">What it costs, in <paramref name="Currency"/>; <c>null</c> where unknown.</param>
/// <param name="Currency">The currency, ISO 4217.</param>
/// <param name="Parts">What it holds.</param>
public sealed record Kit(string? Sku, string Name, double? Price, string? Currency, IReadOnlyList<KitPart> Parts);

/// <summary>One part of a kit; what a part of its kind does not have is <c>null</c>.</summary>
public sealed record KitPart
{
    /// <summary>What it is.</summary>
    public required KitPartKind Kind { get; init; }

    /// <summary>Conductor size as labelled, or the one that a terminal is made for; a power or ground wire has one.</summary>
    public ConductorSize? Size { get; init; }

    /// <summary>A cable's metal; copper where not stated.</summary>
    public Material? Material { get; init; }

    /// <summary>Length of each piece, in metres; a power or ground wire has one.</summary>
    public double? LengthMetres { get; init; }

    /// <summary>How many strands a cable has.</summary>
    public int? StrandCount { get; init; }

    /// <summary>Diameter of one strand, in metres.</summary>
    public double? StrandMetres { get; init; }

    /// <summary>Temperature rating of a cable's insulation, in degrees Celsius.</summary>
    public double? InsulationCelsius { get; init; }

    /// <summary>Its colour.</summary>
    public string? Colour { get; init; }

    /// <summary>A fuse's rated current, in amperes; a fuse has one.</summary>
    public double? RatingAmps { get; init; }

    /// <summary>The family that a fuse belongs to.</summary>
    public FuseFamilyName? Family { get; init; }

    /// <summary>The largest conductor that a fuse holder accepts.</summary>
    public ConductorSize? LargestConductor { get; init; }

    /// <summary>How many conductors leave a distribution block.</summary>
    public int? Ways { get; init; }

    /// <summary>How many of it.</summary>
    public int Count { get; init; } = 1;
}
