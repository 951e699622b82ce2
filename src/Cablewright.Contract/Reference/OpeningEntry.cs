using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>One point of a fuse family's time-current band.</summary>
public sealed record OpeningEntry
{
    /// <summary>Current over rated current.</summary>
    [Figure("1", 1.35)]
    public required double ShareOfRating { get; init; }

    /// <summary>It holds for at least this long, in seconds.</summary>
    [Figure("s", 0.75)]
    public required double FastestSeconds { get; init; }

    /// <summary>It has opened after this long, in seconds. Absent where it need not open.</summary>
    [Figure("s", 600)]
    public double? SlowestSeconds { get; init; }

    /// <summary>Where the point comes from.</summary>
    [Example("maker sheets for 32 V type C blades")]
    public required string Source { get; init; }

    /// <summary>How it was come by: read, computed, from memory, or common practice, no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
