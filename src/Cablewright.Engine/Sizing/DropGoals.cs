using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;

namespace Cablewright.Engine.Sizing;

/// <summary>What a choice is to keep the voltage drop to, one goal after another until one can be kept.</summary>
/// <remarks>
/// First the design target. Where no choice keeps it, a little more than what the strongest candidates lose, between the target
/// and what is clean: so more power never gets less copper; or the hard limit, where given conductors alone lose more than the
/// target. Then the same with two of the largest in parallel, then with all
/// that is made, then the hard limit. A goal is for the conductors; what fuses, joints, body and straps take besides is known
/// well enough from the strongest candidates.
/// </remarks>
internal sealed class DropGoals(SizingTask task)
{
    /// <summary>
    /// No choice has so much smaller fuses than the strongest one that its parts take less than this share of those: within a
    /// limit of the build's own, where a goal a little too wide finds nothing, one a little too narrow does.
    /// </summary>
    private const double SurelyInParts = 0.5;

    private readonly CompleteBuild build = task.Build;
    private readonly Dictionary<Stock, DesignEvaluation?> strongest = [];

    /// <summary>The goals in the order in which they are tried.</summary>
    public IEnumerable<Goal> All
    {
        get
        {
            DropLimits drop = build.Drop;
            bool isOwn = drop.HardVolts <= drop.TargetVolts;
            foreach (Stock stock in Stocks)
            {
                yield return Of(drop.TargetVolts, stock);
                yield return isOwn ? Of(drop.TargetVolts, stock, SurelyInParts) : NearLeast(stock);
            }

            foreach (Stock stock in Stocks)
            {
                yield return Of(drop.HardVolts, stock);
                if (isOwn) yield return Of(drop.HardVolts, stock, SurelyInParts);
            }
        }
    }

    /// <summary>What a choice may be made of, in the order in which that is tried.</summary>
    public IEnumerable<Stock> Stocks => Enum.GetValues<Stock>().Where(stock => stock is not Stock.Paired || MayPair);

    private bool MayPair => CandidateList.MostParallel(Stock.Paired, build) > 1
        && task.Open.Any(run => build.Runs[run].Wish.Count is null);

    /// <summary>The goal of a drop over the conductors.</summary>
    /// <param name="volts">The drop.</param>
    /// <param name="stock">What it may be made of.</param>
    /// <param name="share">How much is allowed for the parts, of what they take in the strongest candidates.</param>
    public Goal Of(double volts, Stock stock, double share = 1)
    {
        Goal goal = Goal.Of(volts, stock, task.Model);
        return Strongest(stock) is { } known
            ? goal with { Volts = [.. goal.Volts.Select((each, amplifier) => each + share * InParts(amplifier, known))] }
            : goal;
    }

    /// <summary>A little more than the least that can be lost at all.</summary>
    /// <param name="least">The strongest candidates, worked out.</param>
    /// <param name="stock">What they are made of.</param>
    public Goal Unavoidable(DesignEvaluation least, Stock stock)
    {
        Goal hard = Of(build.Drop.HardVolts, stock);
        return hard with
        {
            Volts = [.. hard.Volts.Select((volts, amplifier) => Math.Max(volts, Lost(amplifier, least) + Margin))],
            MayExceedLimit = least.Violations.Any(violation => violation.Kind is ViolationKind.DropOverLimit),
        };
    }

    /// <summary>
    /// Whether the strongest candidates, which lose least but for what other ratings of their fuses make, come near to a goal.
    /// </summary>
    public bool MayBeKept(Goal goal) => Strongest(goal.Stock) is { } strong
        && Enumerable.Range(0, goal.Volts.Length).All(amplifier => Lost(amplifier, strong) <= goal.Volts[amplifier] + Margin);

    /// <summary>Every open run as strong as it can be; <c>null</c> where the voltage collapses even so.</summary>
    public DesignEvaluation? Strongest(Stock stock)
    {
        if (!strongest.TryGetValue(stock, out DesignEvaluation? known))
        {
            known = task.Evaluate([.. task.Candidates(stock).Select(choices => choices[^1])]);
            strongest.Add(stock, known);
        }

        return known;
    }

    private double Margin => build.Ruleset.Drop.UnavoidableMargin.Value * build.ChargingVolts;

    private Goal NearLeast(Stock stock)
    {
        Goal target = Of(build.Drop.TargetVolts, stock), clean = Of(build.Drop.CleanVolts, stock);
        if (Strongest(stock) is not { } least) return clean;
        Goal hard = Of(build.Drop.HardVolts, stock);
        return target with
        {
            Volts = [.. target.Volts.Select((volts, amplifier) =>
            {
                double wanted = Lost(amplifier, least) + Margin;
                return wanted > clean.Volts[amplifier] && IsLostInGiven(amplifier, least)
                    ? hard.Volts[amplifier]
                    : Math.Clamp(wanted, volts, clean.Volts[amplifier]);
            })],
        };
    }

    /// <summary>
    /// Whether what is given takes all that the target allows: nothing that is chosen beside it makes up for that, and what is
    /// given is what has to be changed.
    /// </summary>
    private bool IsLostInGiven(int amplifier, DesignEvaluation least) => task.Evaluator.GivenVolts(amplifier, least)
        > build.Drop.TargetVolts * task.Model.Circuit.SourceShareOf(amplifier);

    private double Lost(int amplifier, DesignEvaluation evaluation) =>
        task.Model.Circuit.LostVolts(amplifier, evaluation.Envelope);

    private double InParts(int amplifier, DesignEvaluation evaluation) =>
        Math.Max(0, Lost(amplifier, evaluation) - task.Evaluator.ConductorVolts(amplifier, evaluation));
}
