namespace Cablewright.Engine.Changes;

/// <summary>Work that may still be done, in runs solved; counted, not timed, so that it is the same on every machine.</summary>
/// <param name="budget">The most that may be done in all.</param>
internal sealed class WorkLeft(double budget)
{
    private double left = budget;

    /// <summary>Whether none is left.</summary>
    public bool IsUsedUp => left <= 0;

    /// <summary>Takes what was done.</summary>
    public void Take(double done) => left -= done;
}
