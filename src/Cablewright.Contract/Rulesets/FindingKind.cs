using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Rulesets;

/// <summary>One kind of finding.</summary>
public sealed record FindingKind
{
    /// <summary>Its stable code.</summary>
    [Example("amplifier.drop-over-limit")]
    public required string Code { get; init; }

    /// <summary>What it says.</summary>
    [Example("More voltage is lost on the way to the amplifier and back than the limit allows.")]
    public required string Meaning { get; init; }
}
