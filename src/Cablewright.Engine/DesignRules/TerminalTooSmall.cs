using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>What terminals usually accept is assumed, and no more than worth knowing: a reducer helps.</remarks>
internal sealed class TerminalTooSmall() : RunRule(
    ViolationKind.TerminalTooSmall, Severity.Fail, "run.larger-than-terminal", rules => rules.Terminal.LargestConductor,
    "The conductor does not fit a terminal that it ends in.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        ConductorChoice choice = facts.Design.Conductors[run];
        TerminalLimit? small = null;
        foreach (TerminalLimit terminal in facts.Build.Runs[run].Terminals)
        {
            if (small is not { IsAssumed: false } && !terminal.Takes(choice)) small = terminal;
        }

        if (small is not { } limit) return null;
        Violation violation = By(run, choice.Conductor.Size.NominalAreaMm2 * choice.Count, limit.Largest.NominalAreaMm2);
        return limit.IsAssumed ? violation with { Severity = Severity.Info } : violation;
    }
}
