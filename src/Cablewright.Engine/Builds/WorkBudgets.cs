using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Builds;

/// <summary>How much work a request may take, by the size of its builds.</summary>
/// <remarks>
/// An ordinary build of nine given runs takes some 250 units. The budget follows from the build alone, so that a build gets the
/// same answer whoever sends it. The parts of a request have budgets of their own, which bound how long an ordinary answer takes.
/// Work is counted, not timed, so that they end at the same place on every machine.
/// </remarks>
public static class WorkBudgets
{
    /// <summary>Amplifiers of a build that counts as usual, at most; no car has more.</summary>
    public const int UsualAmplifiers = 16;

    /// <summary>Runs of a build that counts as usual, at most.</summary>
    public const int UsualRuns = 96;

    /// <summary>Batteries of a build that counts as usual, at most.</summary>
    public const int UsualBatteries = 8;

    /// <summary>Choosing the open conductors, over all rounds of all trials, before a choice stops where it is, in runs
    /// solved or gone over for fuses.</summary>
    internal const double Sizing = 250_000;

    /// <summary>Variations, over all trials, before no more are worked out, in runs solved.</summary>
    internal const double Variations = 130_000;

    /// <summary>Changes that make a failing build feasible, over all attempts, before no more are made, in runs solved.</summary>
    internal const double Changes = 120_000;

    /// <summary>Trying out answers, over all questions, before no more are tried, in runs solved.</summary>
    internal const double Questions = 100_000;

    /// <summary>Trying out one variant of a build, an answer to a question or a permitted drop, in runs solved.</summary>
    internal const double Variant = 20_000;

    private const double UsualBudget = 600_000;
    private const double LargerTimes = 4;

    /// <summary>A meter for a request about a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="cancellation">Ends the computation.</param>
    public static WorkMeter MeterFor(Build build, CancellationToken cancellation = default) => MeterFor(build, 1, cancellation);

    /// <summary>A meter for one build of a request about several.</summary>
    /// <param name="build">The build.</param>
    /// <param name="among">Among how many builds of like size the request's work is shared out, 1 or more.</param>
    /// <param name="cancellation">Ends the computation.</param>
    public static WorkMeter MeterFor(Build build, int among, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(build);
        bool isUsual = build.Amplifiers.Count <= UsualAmplifiers
            && build.Runs.Count <= UsualRuns
            && build.Vehicle.Batteries.Count <= UsualBatteries;
        return new WorkMeter(UsualBudget * (isUsual ? 1 : LargerTimes) / among, cancellation);
    }
}
