
namespace Cablewright.Contract.Reference;

/// <summary>The fuse families and their figures.</summary>
public sealed record FuseReference
{
    /// <summary>Every family that a build may name.</summary>
    public required IReadOnlyList<FuseFamilyEntry> Families { get; init; }
}
