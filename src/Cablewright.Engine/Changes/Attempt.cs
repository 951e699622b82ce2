using System.Diagnostics.CodeAnalysis;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>A changed build, assessed.</summary>
/// <param name="Variant">The assessment; <c>null</c> where the voltage collapses.</param>
/// <param name="BreaksMore">A rule fails that held, or failed elsewhere, before the change.</param>
internal sealed record Attempt(Variant? Variant, bool BreaksMore)
{
    /// <summary>Whether no rule fails.</summary>
    [MemberNotNullWhen(true, nameof(Variant))]
    public bool Stands => Variant is { Stands: true };

    /// <summary>The rules that fail.</summary>
    public IEnumerable<Violation> Fails =>
        Variant is null ? [] : Variant.Violations.Where(violation => violation.Severity is Severity.Fail);
}
