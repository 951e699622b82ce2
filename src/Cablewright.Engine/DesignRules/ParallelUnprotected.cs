using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class ParallelUnprotected() : EndRule(
    ViolationKind.ParallelUnprotected, Severity.Fail, "run.parallel-unguarded", rules => rules.Fuse.OnePerConductor,
    "Parallel conductors share a fuse that is too large for one of them alone.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, RunEnd end) =>
        facts.TooMuchEntering(end) is { } entering && !Significant.Exceeds(entering, facts.AmpacityOfAll(end.Run))
            ? At(end, entering, facts.AmpacityOfEach(end.Run))
            : null;
}
