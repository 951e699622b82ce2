using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Rulesets;

/// <summary>One kind of finding.</summary>
public sealed record FindingKind
{
    /// <summary>Its stable code.</summary>
    [Example("run.drop.over-limit")]
    public required string Code { get; init; }

    /// <summary>What it says.</summary>
    [Example("The drop from battery to amplifier and back is above the limit.")]
    public required string Meaning { get; init; }
}
