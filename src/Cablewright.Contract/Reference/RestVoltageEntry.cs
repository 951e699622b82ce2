using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Reference;

/// <summary>One point of a list of rest voltages.</summary>
public sealed record RestVoltageEntry
{
    /// <summary>What the battery is made of.</summary>
    public required Chemistry Chemistry { get; init; }

    /// <summary>State of charge, 0 to 1.</summary>
    [Figure("1", 0.5)]
    public required double StateOfCharge { get; init; }

    /// <summary>Rest voltage of a battery of 12 V nominal, in volts.</summary>
    [Figure("V", 12.2)]
    public required double Volts { get; init; }

    /// <summary>Where the point comes from.</summary>
    [Example("engineering list of rest voltages, lead-acid")]
    public required string Source { get; init; }

    /// <summary>How it was come by: read, computed, from memory, or common practice, no source.</summary>
    [Example("read")]
    public required string Provenance { get; init; }
}
