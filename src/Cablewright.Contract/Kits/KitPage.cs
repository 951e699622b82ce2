using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>One page of a shop's kits, by number.</summary>
public sealed record KitPage
{
    /// <summary>The state of the catalogue that this page shows; it grows with every change of a kit.</summary>
    [Figure("1", 42)]
    public required long Revision { get; init; }

    /// <summary>The kits in brief, sorted by number.</summary>
    public required IReadOnlyList<KitEntry> Kits { get; init; }

    /// <summary>Where the next page starts, for the parameter <c>after</c>; absent on the last page.</summary>
    [Example("QUstNC0xMDA")]
    public string? Next { get; init; }
}
