using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>One figure of the computation.</summary>
public sealed record ReferenceFigure
{
    /// <summary>Its name.</summary>
    [Example("lay-factor")]
    public required string Name { get; init; }

    /// <summary>The number, in <c>unit</c>.</summary>
    [Figure("see unit", 1.02)]
    public required double Value { get; init; }

    /// <summary>Its unit; 1 for a ratio.</summary>
    [Example("1")]
    public required string Unit { get; init; }

    /// <summary>What it stands for.</summary>
    [Example("resistance and mass of a stranded conductor over a solid one of the same metal area")]
    public required string Meaning { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>How they were come by: read, computed, from memory, or common practice with no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
