using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Audits;

/// <summary>Whether a cable can be of a metal.</summary>
public sealed record MetalCandidate
{
    /// <summary>The metal.</summary>
    public required Material Material { get; init; }

    /// <summary>Whether all measurements allow it.</summary>
    [Example(true)]
    public required bool Possible { get; init; }
}
