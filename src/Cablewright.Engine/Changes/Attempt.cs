using Cablewright.Engine.Findings;
using Cablewright.Engine.Variations;

namespace Cablewright.Engine.Changes;

/// <summary>A changed build, assessed.</summary>
/// <param name="Variant">The assessment.</param>
/// <param name="BreaksMore">A rule fails that held, or failed elsewhere, before the change.</param>
internal sealed record Attempt(Variant Variant, bool BreaksMore)
{
    /// <summary>Whether no rule fails.</summary>
    public bool Stands => Variant.Stands;

    /// <summary>The rules that fail.</summary>
    public IEnumerable<Breach> Fails => Variant.Breaches.Where(breach => breach.Severity is Severity.Fail);
}
