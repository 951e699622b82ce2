using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

internal sealed class BeyondStock() : Rule(
    ViolationKind.BeyondStock, Severity.Info, "sizing.beyond-stock", rules => rules.Sizing.StockedParallel,
    "Nothing that the trade keeps in stock serves: a conductor is of a rarer size, or there are more than two in parallel.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <summary>The rule.</summary>
    public static BeyondStock Rule { get; } = new();

    /// <summary>How a choice violates it; <c>null</c> where it holds.</summary>
    public Violation? Check(SizedBuild sized) => sized.IsBeyondStock ? By(0) : null;
}
