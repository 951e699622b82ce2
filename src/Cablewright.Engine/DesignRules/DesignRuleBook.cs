using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>Every rule about a design.</summary>
internal static class DesignRuleBook
{
    private static readonly AmplifierRule[] OfAmplifiers =
    [
        new DropOverLimit(), new DropHigh(), new DropOverTarget(), new OutsideSupplyRange(), new SupplyNotCharged(),
            new RatingAboveOnBoardFuse(), new ReturnBelowSupply(),
    ];

    private static readonly RunRule[] OfRuns =
    [
        new SurroundingsTooHot(), new OverAmpacity(), new TerminalTooSmall(), new IsolatorUnrated(), new IsolatorOverRated(),
        new SharedReturnBelowSupply(), new FuseInReturn(), new AlternatorDropLarge(), new StrapTooSmall(), new CopperClad(),
    ];

    private static readonly EndRule[] OfEnds =
    [
        new ParallelUnprotected(), new FuseMissingAtReduction(), new NoFuseFits(), new FuseAboveConductor(),
        new AlternatorCableUnprotected(), new FuseMissingAtBattery(), new FuseBelowLoad(), new FuseHotBelowLoad(),
        new FuseOpensOnNote(),
        new FuseNotStandard(), new FuseVoltageTooLow(), new FuseTooFar(), new FuseNotNear(), new FuseChosen(),
    ];

    private static readonly StrapBelowFuses OfBatteries = new();

    /// <summary>All of them.</summary>
    public static IEnumerable<Rule> All => [.. OfAmplifiers, .. OfRuns, .. OfEnds, OfBatteries];

    /// <summary>Every way in which a design violates one.</summary>
    public static IEnumerable<Violation> Violations(DesignFacts facts)
    {
        for (int amplifier = 0; amplifier < facts.Build.Draws.Count; amplifier++)
        {
            foreach (AmplifierRule rule in OfAmplifiers)
            {
                if (rule.Check(facts, amplifier) is { } violation) yield return violation;
            }
        }

        for (int battery = 0; battery < facts.Build.Batteries.Count; battery++)
        {
            if (OfBatteries.Check(facts, battery) is { } violation) yield return violation;
        }

        for (int run = 0; run < facts.Build.Runs.Count; run++)
        {
            foreach (RunRule rule in OfRuns)
            {
                if (rule.Check(facts, run) is { } violation) yield return violation;
            }

            if (facts.Build.Runs[run].Side is Side.Return) continue;
            foreach (RunEnd end in RunEnd.Of(run))
            {
                foreach (EndRule rule in OfEnds)
                {
                    if (rule.Check(facts, end) is { } violation) yield return violation;
                }
            }
        }
    }
}
