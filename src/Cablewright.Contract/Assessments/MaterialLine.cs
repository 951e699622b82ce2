using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>One line of what the job needs.</summary>
public sealed record MaterialLine
{
    /// <summary>What it is, in words of the trade.</summary>
    [JsonPropertyName("item")]
    [Example("power wire")]
    public required string ItemName { get; init; }

    /// <summary>Conductor size, where it has one.</summary>
    [Example("1/0 AWG")]
    public string? Size { get; init; }

    /// <summary>The size that a reducer ends in.</summary>
    [Example("4 AWG")]
    public string? ReducedTo { get; init; }

    /// <summary>How many runs leave a distribution block.</summary>
    [Figure("1", 2, Smallest = 2)]
    public int? Ways { get; init; }

    /// <summary>Metal, where it has one.</summary>
    public Material? Material { get; init; }

    /// <summary>Total length, in metres, where it has one.</summary>
    [Figure("m", 4.8768)]
    public double? LengthMetres { get; init; }

    /// <summary>The length to buy, with an allowance for bends and ends, in metres; absent where it has no length.</summary>
    [Figure("m", 5.36448)]
    public double? CutLengthMetres { get; init; }

    /// <summary>Rated current, in amperes, where it has one.</summary>
    [Figure("A", 150)]
    public double? RatingAmps { get; init; }

    /// <summary>Fuse family, where it has one.</summary>
    public FuseFamilyName? Family { get; init; }

    /// <summary>How many pieces.</summary>
    [Figure("1", 1, Smallest = 1)]
    public required int Count { get; init; }

    /// <summary>
    /// What the line costs by the prices that the build's <c>sizing</c> states: <c>cutLengthMetres</c> of a conductor, each fuse
    /// with its holder, terminal and distribution block; absent where they have none for it.
    /// </summary>
    [Figure("see currency", 21.9941)]
    public double? Price { get; init; }

    /// <summary>The currency of the price, where the build names one.</summary>
    [Example("EUR")]
    public string? Currency { get; init; }
}
