using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>One page of a shop's kits, by number.</summary>
public sealed record KitPage
{
    /// <summary>The state of the catalogue that this page shows; it grows with every change of a kit.</summary>
    [Figure("1", 42)]
    public required long Revision { get; init; }

    /// <summary>The kits in brief, sorted by number; with the unreadable ones at most as many as were asked for.</summary>
    public required IReadOnlyList<KitEntry> Kits { get; init; }

    /// <summary>
    /// The numbers of kits that belong on this page and cannot be read: damaged, or written by a later release. Put them again.
    /// </summary>
    [Example("AK-9")]
    public required IReadOnlyList<string> Unreadable { get; init; }

    /// <summary>Where the next page starts, for the parameter <c>after</c>; absent on the last page.</summary>
    [Example("QUstNC0xMDA")]
    public string? Next { get; init; }
}
