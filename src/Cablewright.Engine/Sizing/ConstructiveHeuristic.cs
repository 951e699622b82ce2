using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>A good choice, found at once whatever the size of the build.</summary>
/// <remarks>
/// <para>Method: with the currents of a circuit at hand the lightest choice is a <see cref="TreeKnapsack"/> over each
/// amplifier's way, whose solution is worked out in full; that gives new currents, and so on. Where they stay, the solution is
/// the lightest for its own currents: as a rule the optimum itself, or nearly. A rule that it breaks takes what is no stronger
/// from the run that can cure it; a goal that is missed again with the same conductors is aimed at a little lower.</para>
/// <para>In a loop the way of fewest runs counts as the only one, and the others become as light as heat allows. Nothing is
/// proven here, so that does no harm.</para>
/// </remarks>
internal sealed class ConstructiveHeuristic
{
    private const int MostRounds = 24;

    /// <summary>How many rounds may follow the first choice that stands.</summary>
    private const int MostAfter = 3;

    /// <summary>
    /// After so many rounds that missed the goal, two choices are likely to call for each other, and each further round aims
    /// lower.
    /// </summary>
    private const int MostHopeful = 6;

    /// <summary>From the currents of a choice that stands, another settles soon or not at all.</summary>
    private const int MostRoundsAfter = 5, MostHopefulAfter = 1;

    /// <summary>How much more than the goal a prediction may lose: it may be off by so much.</summary>
    private const double Hope = 0.005;

    private const double Step = 0.9, Less = 0.97;
    private const double Margin = 0.001;

    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly ChoiceRules rules;
    private readonly ReturnRule[] returns;
    private readonly ConductorChoice[][] candidates;
    private readonly double[] siemens;
    private readonly double[] shares;

    /// <summary>Prepares the heuristic.</summary>
    public ConstructiveHeuristic(SizingTask task, Goal goal, ChoiceRules rules, IReadOnlyList<ConductorChoice>[] candidates,
        ReturnRule[] returns)
    {
        this.task = task;
        this.goal = goal;
        this.rules = rules;
        this.returns = returns;
        this.candidates = [.. candidates.Select(choices => choices.ToArray())];
        siemens = [.. candidates.Select((choices, run) => IsGiven(run) ? 1 / choices[0].OhmsPerMetreAt20 : double.NaN)];
        shares = [.. goal.Volts.Select(_ => 1.0)];
    }

    /// <summary>Looks for choices.</summary>
    /// <param name="trials">Takes them.</param>
    /// <param name="from">Whose currents to begin with; <c>null</c>: estimated ones.</param>
    /// <returns>The last that has a solution; <c>null</c>: none.</returns>
    public DesignEvaluation? Find(Trials trials, DesignEvaluation? from = null)
    {
        if (from is not null) Array.Fill(shares, 1 + Hope);
        (int rounds, int hopeful) = from is null ? (MostRounds, MostHopeful) : (MostRoundsAfter, MostHopefulAfter);
        DesignEvaluation? last = null;
        HeuristicNumbers numbers = from is null ? Estimated() : NumbersOf(from);
        var before = new List<ConductorChoice[]>();
        int after = 0;
        for (int round = 0; round < rounds && after <= MostAfter && !task.IsOutOfWork; round++)
        {
            if (Solve(numbers) is not { } conductors)
            {
                if (!AimHigher()) return last;
                continue;
            }

            if (!trials.MayBeLighter(conductors)) return last;
            bool isKnown = before.Exists(known => known.AsSpan().SequenceEqual(conductors));
            if (isKnown && after > 0) return last;
            before.Add(conductors);
            Tried tried = trials.Try(conductors);
            if (tried.IsKept || after > 0) after++;
            if (tried.Evaluation is { } evaluation)
            {
                last = evaluation;
                numbers = NumbersOf(evaluation);
            }

            bool repeats = isKnown || tried.Evaluation is null || round >= hopeful;
            if (tried.IsKept || Aside(tried, conductors) || !repeats || SettleShared(conductors)) continue;
            if (!AimLower(tried.Evaluation) && (from is null || !LoseLess(tried.Evaluation))) return last;
        }

        return last;
    }

    /// <summary>
    /// A choice that carries the currents that always exist, for a build whose voltage collapses whatever is chosen.
    /// </summary>
    public ConductorChoice[] Ampacity()
    {
        HeuristicNumbers numbers = Estimated();
        return [.. candidates.Select((choices, run) => IsGiven(run)
            ? choices[0]
            : Allowed(numbers, run).MinBy(choice => Significant.Round(task.WeightOf(run, choice))))];
    }

    private HeuristicNumbers NumbersOf(DesignEvaluation evaluation) =>
        new(task, goal, rules, evaluation.Design, evaluation.Envelope, hasFuses: true, Settled(evaluation.Design.Conductors));

    /// <summary>What is decided, and of the rest what is there now.</summary>
    private ConductorChoice[] Settled(ConductorChoice[] present) =>
        Array.Exists(task.Open, run => candidates[run] is [var only] && only != present[run])
        ? [.. present.Select((choice, run) => candidates[run] is [var only] ? only : choice)]
        : present;

    private HeuristicNumbers Estimated()
    {
        Design strongest = SizingTask.WithoutFuses([.. candidates.Select(choices => choices[^1])]);
        return new HeuristicNumbers(task, goal, rules, strongest, task.Evaluator.Estimate(strongest, goal.Volts),
            hasFuses: false, strongest.Conductors);
    }

    private ConductorChoice[] Allowed(HeuristicNumbers numbers, int run)
    {
        ConductorChoice[] ampacity = [.. candidates[run].Where(choice => numbers.CanBear(run, choice))];
        return ampacity.Length > 0 ? ampacity : [candidates[run][^1]];
    }

    private ConductorChoice[]? Solve(HeuristicNumbers numbers)
    {
        ConductorChoice[][] allowed = [.. candidates.Select((choices, run) => IsGiven(run) ? choices : Allowed(numbers, run))];
        RunTree tree = task.HeuristicTree;
        var problem = new TreeKnapsack(
            task, tree,
            [.. allowed.Select((choices, run) => choices
                .Select(choice => new DropOption(numbers.Volts(run, choice), task.WeightOf(run, choice))).ToArray())],
            [.. goal.Volts.Select((volts, load) => numbers.LimitOf(load, task.Ways[load], volts * shares[load]))],
            (load, one, other) => MayPair(tree.Own[load], load, allowed, (one, other)),
            isBound: false);
        if (problem.Solve() is not { } picked) return null;
        foreach (int run in tree.Aside) picked[run] = Lightest(run, allowed[run]);
        return [.. allowed.Select((choices, run) => choices[picked[run]])];
    }

    private int Lightest(int run, ConductorChoice[] choices) =>
        Enumerable.Range(0, choices.Length).MinBy(option => Significant.Round(task.WeightOf(run, choices[option])));

    private bool MayPair(int[] own, int load, ConductorChoice[][] allowed, (int One, int Other) picked)
    {
        siemens[own[0]] = 1 / allowed[own[0]][picked.One].OhmsPerMetreAt20;
        siemens[own[1]] = 1 / allowed[own[1]][picked.Other].OhmsPerMetreAt20;
        bool may = returns[load].MayHold(siemens);
        siemens[own[0]] = siemens[own[1]] = double.NaN;
        return may;
    }

    /// <summary>Takes away what cannot cure a rule that is broken.</summary>
    private bool Aside(Tried tried, ConductorChoice[] conductors)
    {
        bool isAny = false;
        foreach (Violation violation in tried.Broken)
        {
            foreach (int run in rules.CuringRuns(violation))
            {
                ConductorChoice now = conductors[run];
                double ampacity = task.Model.Ampacities.OfAll(run, now);
                ConductorChoice[] stronger = [.. candidates[run].Where(choice => choice.OhmsPerMetreAt20 < now.OhmsPerMetreAt20
                    || task.Model.Ampacities.OfAll(run, choice) > ampacity)];
                if (violation.Kind is not (
                    ViolationKind.ReturnBelowSupply or ViolationKind.FuseClearsTooLate or ViolationKind.FuseMayNotOpen
                    or ViolationKind.FuseOpensOnNote))
                {
                    ConductorChoice[] bears =
                        [.. stronger.Where(choice =>
                            !Significant.Exceeds(violation.Measured, task.Model.Ampacities.OfAll(run, choice)))];
                    if (bears.Length > 0) stronger = bears;
                }

                if (stronger.Length == 0 || stronger.Length == candidates[run].Length) continue;
                candidates[run] = stronger;
                isAny = true;
            }
        }

        return isAny;
    }

    /// <summary>
    /// Keeps to the shared runs of a choice at hand, whose fuses say which other runs want one; a choice may else turn for ever
    /// between two that each count on the fuses of the other.
    /// </summary>
    private bool SettleShared(ConductorChoice[] conductors)
    {
        bool isAny = false;
        foreach (int run in task.HeuristicTree.Shared)
        {
            isAny |= candidates[run].Length > 1;
            candidates[run] = [conductors[run]];
        }

        return isAny;
    }

    private bool AimLower(DesignEvaluation? evaluation)
    {
        if (evaluation is null)
        {
            for (int load = 0; load < shares.Length; load++) shares[load] *= Step;
            return shares[0] > 1 - Step;
        }

        bool isAny = false;
        foreach (int load in goal.Over(evaluation.Envelope, task.Model.Circuit))
        {
            shares[load] *= goal.Volts[load] / task.Model.Circuit.LostVolts(load, evaluation.Envelope) - Margin;
            isAny = true;
        }

        return isAny;
    }

    /// <summary>
    /// Aims below what is lost now: a rule that a little less current would keep is broken in a run that stays as it is.
    /// </summary>
    private bool LoseLess(DesignEvaluation? evaluation)
    {
        if (evaluation is null) return false;
        for (int load = 0; load < shares.Length; load++)
            shares[load] = Less * task.Model.Circuit.LostVolts(load, evaluation.Envelope) / goal.Volts[load];
        return true;
    }

    /// <summary>Goes back half of the way, where it was aimed so low that no choice is left.</summary>
    private bool AimHigher()
    {
        bool isAny = false;
        for (int load = 0; load < shares.Length; load++)
        {
            isAny |= shares[load] < 1 - Margin;
            shares[load] = (1 + shares[load]) / 2;
        }

        return isAny;
    }

    private bool IsGiven(int run) => task.Build.Runs[run].Given is not null;
}
