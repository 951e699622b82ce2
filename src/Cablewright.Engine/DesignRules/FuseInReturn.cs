using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

internal sealed class FuseInReturn() : RunRule(
    ViolationKind.FuseInReturn, Severity.Caution, "fuse.in-return", rules => rules.Fuse.NoneInReturn,
    "A fuse stands in a return.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        CompleteRun described = facts.Build.Runs[run];
        if (described.Side is Side.Supply || !(described.Near.MustBeFitted || described.Far.MustBeFitted)) return null;
        return At(new RunEnd(run, !described.Near.MustBeFitted));
    }
}
