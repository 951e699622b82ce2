using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>A value that was not stated.</summary>
public sealed record Assumption
{
    /// <summary>The JSON pointer (RFC 6901) into the build that the value stands for.</summary>
    [Example("/vehicle/chargingVoltage")]
    public required string Pointer { get; init; }

    /// <summary>The value with its unit.</summary>
    [Example("13.5 V")]
    public required string Value { get; init; }

    /// <summary>Why this value.</summary>
    [Example("The build states no charging voltage.")]
    public required string Reason { get; init; }

    /// <summary>
    /// The values of which <c>value</c> and <c>reason</c> are made, for a sentence of one's own: numbers in the unit that ends
    /// their name, ids and words; absent where there are none.
    /// </summary>
    [Example("""{ "volts": 13.5, "nominalVolts": 12 }""", IsJson = true)]
    public IReadOnlyDictionary<string, Param>? Params { get; init; }

    /// <summary>Where it comes from.</summary>
    [Example("SAE J56, alternator rating test voltage")]
    public required string Source { get; init; }
}
