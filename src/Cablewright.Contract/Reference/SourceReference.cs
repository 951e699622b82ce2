
namespace Cablewright.Contract.Reference;

/// <summary>Every source that a figure of this service rests on.</summary>
public sealed record SourceReference
{
    /// <summary>The sources, in alphabetical order.</summary>
    public required IReadOnlyList<SourceEntry> Sources { get; init; }
}
