using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>What is left of a fuse's lasting current in hot air.</summary>
public sealed record DeratingEntry
{
    /// <summary>Air around the fuse, in degrees Celsius.</summary>
    [Figure("°C", 85)]
    public required double Celsius { get; init; }

    /// <summary>Lasting current over lasting current at room temperature.</summary>
    [Figure("1", 0.75)]
    public required double Share { get; init; }

    /// <summary>Where the point comes from.</summary>
    [Example("maker sheet, 40 A type E blade")]
    public required string Source { get; init; }

    /// <summary>How it was come by: read, computed, from memory, or common practice, no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
