using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Comparisons;

/// <summary>Something in which builds differ.</summary>
public sealed record Difference
{
    /// <summary>What it is about: <c>run</c>, <c>amplifier</c> or <c>finding</c>.</summary>
    [Example("run")]
    public required string Subject { get; init; }

    /// <summary>Its id, or the finding's code.</summary>
    [Example("main")]
    public required string Id { get; init; }

    /// <summary>The member of the assessment that differs.</summary>
    [Example("conductor")]
    public required string What { get; init; }

    /// <summary>Its value in each build, in words; empty where a build has no such thing.</summary>
    [Example("4 AWG copper")]
    public required IReadOnlyList<string> Values { get; init; }
}
