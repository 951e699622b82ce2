namespace Cablewright.Contract.Reference;

/// <summary>The batteries' figures that no ruleset carries.</summary>
public sealed record BatteryReference
{
    /// <summary>Rest voltage by chemistry and state of charge, straight lines between the points.</summary>
    public required IReadOnlyList<RestVoltageEntry> RestVoltages { get; init; }
}
