using Cablewright.Engine.Designs;

namespace Cablewright.Engine.Changes;

/// <summary>What was found for a failing build.</summary>
/// <param name="Curing">Changes after which no rule fails.</param>
/// <param name="Nearest">The change after which the fewest rules fail.</param>
/// <param name="IsComplete">Whether every kind of change was tried.</param>
internal sealed record FoundChanges(
    IReadOnlyList<(Change Change, Variant After)> Curing, (Change Change, Variant After)? Nearest, bool IsComplete);
