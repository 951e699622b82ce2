using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Builds;

/// <summary>How much work a request may take, by the size of its builds.</summary>
/// <remarks>
/// An ordinary build of nine given runs takes some 250 units. The budget follows from the build alone, so that a build gets the
/// same answer whoever sends it.
/// </remarks>
public static class WorkBudgets
{
    /// <summary>Amplifiers of a build that counts as usual, at most; no car has more.</summary>
    public const int UsualAmplifiers = 16;

    /// <summary>Runs of a build that counts as usual, at most.</summary>
    public const int UsualRuns = 96;

    /// <summary>Batteries of a build that counts as usual, at most.</summary>
    public const int UsualBatteries = 8;

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
