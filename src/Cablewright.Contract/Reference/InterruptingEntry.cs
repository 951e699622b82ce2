using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Reference;

/// <summary>The largest current that a fuse is known to interrupt at a voltage.</summary>
public sealed record InterruptingEntry
{
    /// <summary>Direct voltage, in volts.</summary>
    [Figure("V", 32)]
    public required double Volts { get; init; }

    /// <summary>Interrupting rating, in amperes.</summary>
    [Figure("A", 2000)]
    public required double Amps { get; init; }

    /// <summary>Where the figure comes from.</summary>
    [Example("ISO 8820-5:2015 scope")]
    public required string Source { get; init; }

    /// <summary>How it was come by: read, computed, from memory, or common practice, no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
