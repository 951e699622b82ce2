
namespace Cablewright.Contract.Reference;

/// <summary>The tables behind every figure about conductors.</summary>
public sealed record ConductorReference
{
    /// <summary>Every size that a build may name, the least metal first.</summary>
    public required IReadOnlyList<SizeEntry> Sizes { get; init; }

    /// <summary>Every metal.</summary>
    public required IReadOnlyList<MaterialEntry> Materials { get; init; }

    /// <summary>The published current-carrying figures of copper.</summary>
    public required IReadOnlyList<AmpacityEntry> Ampacity { get; init; }

    /// <summary>Single figures: stranding, heat balance, walls of insulation.</summary>
    public required IReadOnlyList<ReferenceFigure> Figures { get; init; }
}
