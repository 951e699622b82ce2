namespace Cablewright.Engine.Numerics;

/// <summary>
/// Counts the work of one request, over everything that the request asks for, and ends it where its caller is gone.
/// </summary>
/// <remarks>
/// <para>The unit is one run solved once, some half a microsecond. Work is counted, not timed, so that the same request gives the
/// same answer on every machine.</para>
/// <para>A part of a meter has a budget of its own, and whatever it counts the whole counts too. A search looks at its meter and
/// stops where it is; what is optional is ended by <see cref="Within"/>; a whole request that goes far beyond its budget all the
/// same, by <see cref="WorkExceededException"/>.</para>
/// </remarks>
public sealed class WorkMeter
{
    /// <summary>How far beyond its budget a whole request may go to finish what is not optional.</summary>
    private const double MostOfBudget = 1.5;

    private readonly WorkMeter? whole;
    private readonly CancellationToken cancellation;
    private readonly double most;

    /// <summary>A meter for a whole request.</summary>
    /// <param name="budget">The most that may be counted before what is optional is left out, in units.</param>
    /// <param name="cancellation">Ends the computation with an <see cref="OperationCanceledException"/>.</param>
    public WorkMeter(double budget, CancellationToken cancellation = default)
    {
        Budget = budget;
        most = MostOfBudget * budget;
        this.cancellation = cancellation;
    }

    private WorkMeter(double budget, double most, WorkMeter whole)
    {
        Budget = budget;
        this.most = most;
        this.whole = whole;
        cancellation = whole.cancellation;
    }

    /// <summary>The most that may be counted before what is optional is left out, in units.</summary>
    public double Budget { get; }

    /// <summary>What was counted so far, in units.</summary>
    public double Used { get; private set; }

    /// <summary>Whether nothing is left, here or of the whole.</summary>
    public bool IsUsedUp => Left <= 0;

    /// <summary>What is left, here and of the whole, in units.</summary>
    private double Left => Math.Min(Budget - Used, whole?.Left ?? double.PositiveInfinity);

    /// <summary>A meter for a part of the request.</summary>
    /// <param name="budget">The most that the part may count, in units.</param>
    public WorkMeter Part(double budget) => new(budget, double.PositiveInfinity, this);

    /// <summary>A meter for a part of the request that must leave as much again for what comes after.</summary>
    /// <param name="budget">The most that the part may count, in units.</param>
    public WorkMeter FairPart(double budget) => Part(Math.Min(budget, (Budget - Used) / 2));

    /// <summary>Does something optional, as far as the budget goes.</summary>
    /// <param name="budget">The most that it may count, in units.</param>
    /// <param name="work">What is done, on a meter of its own.</param>
    /// <returns>What came of it; <c>null</c> where the budget ended first.</returns>
    public T? Within<T>(double budget, Func<WorkMeter, T> work)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(work);
        if (IsUsedUp) return null;
        double left = Math.Min(budget, Left);
        var part = new WorkMeter(left, left, this);
        try
        {
            return work(part);
        }
        catch (WorkExceededException exceeded) when (exceeded.Meter == part)
        {
            return null;
        }
    }

    /// <summary>Counts work.</summary>
    /// <param name="units">How much, in units.</param>
    /// <exception cref="OperationCanceledException">The computation was ended.</exception>
    /// <exception cref="WorkExceededException">More was counted than may be.</exception>
    public void Count(double units)
    {
        WorkMeter? exceeded = null;
        for (WorkMeter? meter = this; meter is not null; meter = meter.whole)
        {
            meter.Used += units;
            if (meter.Used > meter.most) exceeded = meter;
        }

        if (exceeded is not null) throw new WorkExceededException(exceeded);
        cancellation.ThrowIfCancellationRequested();
    }
}
