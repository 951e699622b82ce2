using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>Whether a cable can be of a metal.</summary>
/// <param name="Material">The metal.</param>
/// <param name="IsPossible">Whether all measurements allow it.</param>
internal readonly record struct MetalCandidate(Material Material, bool IsPossible);
