using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>A burst of full output on what the alternator or converter has left, the batteries and the capacitors.</summary>
public sealed record Burst
{
    /// <summary>How long it lasts, in milliseconds.</summary>
    [Figure("ms", 500)]
    public required double Milliseconds { get; init; }

    /// <summary>The id of the amplifier whose voltage ends lowest.</summary>
    [Example("bass")]
    public required string Amplifier { get; init; }

    /// <summary>Its lowest voltage in that time, in volts; absent where the supply cannot hold full output.</summary>
    [Figure("V", 12.1)]
    public double? LowestVolts { get; init; }

    /// <summary>
    /// The same with the capacitors taken away, in volts; absent where the supply cannot hold full output without them.
    /// </summary>
    [Figure("V", 11.9)]
    public double? LowestVoltsWithoutCapacitors { get; init; }
}
