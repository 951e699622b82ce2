using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Comparisons;

/// <summary>Several builds side by side.</summary>
public sealed record Comparison
{
    /// <summary>What each comes to, in the order in which they were sent.</summary>
    public required IReadOnlyList<ComparedBuild> Builds { get; init; }

    /// <summary>Where they differ, by what their assessments show.</summary>
    public required IReadOnlyList<Difference> Differences { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
