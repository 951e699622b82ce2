using Cablewright.Engine.Builds;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.ShortCircuits;

/// <summary>Every rule about short circuits and overloads.</summary>
internal static class FaultRuleBook
{
    private static readonly ClearingRule[] OfClearings = [new FuseMayNotOpen(), new FuseClearsTooLate(), new OverloadHurts()];

    private static readonly FaultRule[] OfFuses =
        [new InterruptingTooLow(), new InterruptingUnknown(), new BandRecalled(), new NotSelective()];

    private static readonly BodyDropLarge OfBody = new();

    /// <summary>All of them.</summary>
    public static IEnumerable<Rule> All => [.. OfClearings, .. OfFuses, OfBody];

    /// <summary>Works out what short circuits and overloads would do to a design.</summary>
    /// <param name="model">The build.</param>
    /// <param name="evaluation">The design, worked out.</param>
    public static FaultReport Report(BuildModel model, DesignEvaluation evaluation)
    {
        var facts = new FaultFacts(model, evaluation);
        Violation[] violations = [.. Violations(facts)];
        return new FaultReport(facts.Clearings, facts.LargestAmps, violations);
    }

    private static IEnumerable<Violation> Violations(FaultFacts facts)
    {
        foreach (Clearing clearing in facts.Clearings)
        {
            foreach (ClearingRule rule in OfClearings)
            {
                if (rule.Check(facts, clearing) is { } violation) yield return violation;
            }
        }

        foreach (RunEnd end in facts.Model.Topology.Outwards.Order().SelectMany(RunEnd.Of))
        {
            if (facts.Evaluation.Design.FuseAt(end) is not { } fuse) continue;
            foreach (FaultRule rule in OfFuses)
            {
                if (rule.Check(facts, end, fuse) is { } violation) yield return violation;
            }
        }

        if (OfBody.Check(facts) is { } drop) yield return drop;
    }
}
