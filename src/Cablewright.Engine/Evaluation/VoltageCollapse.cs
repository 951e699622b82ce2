using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Evaluation;

internal sealed class VoltageCollapse() : Rule(
    ViolationKind.VoltageCollapse, Severity.Fail, "circuit.voltage-collapse", rules => rules.Circuit.SolvableOutput,
    "The wiring cannot carry the rated output at any voltage; the largest output that it can carry is given.")
{
    /// <inheritdoc/>
    public override Concern Concern => Concern.Performance;

    /// <summary>The rule.</summary>
    public static VoltageCollapse Rule { get; } = new();

    /// <summary>It is violated, and the wiring carries a share of the output.</summary>
    public static Violation At(double share) => Rule.By(0, 1, share);
}
