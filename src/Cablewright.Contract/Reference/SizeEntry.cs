using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>One conductor size.</summary>
public sealed record SizeEntry
{
    /// <summary>The size in writing.</summary>
    [Example("25 mm2")]
    public required string Size { get; init; }

    /// <summary>The area that the label stands for, in mm².</summary>
    [Figure("mm2", 25)]
    public required double NominalAreaMm2 { get; init; }

    /// <summary>The metal that is certain to be there, in mm²: nominal metric areas are labels.</summary>
    [Figure("mm2", 22.546)]
    public required double MetalAreaMm2 { get; init; }

    /// <summary>The size in each metal.</summary>
    public required IReadOnlyList<ConductorEntry> Conductors { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
