namespace Cablewright.Engine.Changes;

/// <summary>Finds the smallest change on a ladder after which no rule fails.</summary>
/// <remarks>
/// Method: the largest change first, since most ladders help nothing at all; where that breaks rules that held before, ever
/// smaller ones; then halving down to a change that stands and the one before it that does not.
/// </remarks>
internal sealed class LadderSearch(Attempts attempts)
{
    /// <summary>What became of the first change that was tried; <c>null</c> where none was.</summary>
    public Attempt? First { get; private set; }

    /// <summary>The smallest change that stands, with every open conductor chosen; <c>null</c> where none does.</summary>
    public Found? Find(Ladder ladder)
    {
        First = null;
        if (ladder.Count == 0) return null;
        return !attempts.HasOpen ? Find(ladder, attempts.Full)
            : Find(ladder, attempts.Quick) is { } near ? Settled(ladder, near.Place) : null;
    }

    /// <summary>The same on a ladder that says what may be chosen, so that no choice can stand for all.</summary>
    public Found? FindFull(Ladder ladder) => ladder.Count == 0 ? null : Find(ladder, attempts.Full);

    private Found? Find(Ladder ladder, Func<Change, Attempt?> assess)
    {
        int place = ladder.Count;
        Attempt? last = First = assess(ladder.At(place));
        while (last is { Stands: false, BreaksMore: true } && place > 1) last = assess(ladder.At(place /= 2));
        return last is { Stands: true } ? Narrowed(ladder, 0, new Found(place, ladder.At(place), last), assess) : null;
    }

    /// <summary>From a place near the one that is sought, to it.</summary>
    private Found? Settled(Ladder ladder, int near)
    {
        int low = 0, place = near;
        for (int stride = 1; ; stride *= 2)
        {
            Change change = ladder.At(place);
            if (attempts.Full(change) is { Stands: true } stands)
                return Narrowed(ladder, low > 0 ? low : LowBelow(ladder, near), new Found(place, change, stands), attempts.Full);
            if (place == ladder.Count || attempts.IsOutOfWork) return null;
            low = place;
            place = Math.Min(ladder.Count, near + stride);
        }
    }

    /// <summary>The place before, where that does not stand; else the foot of the ladder.</summary>
    private int LowBelow(Ladder ladder, int place)
    {
        if (place == 1 || (attempts.Quick(ladder.At(place - 1)) is { } quick && Attempts.IsBeyondChoice(quick))) return place - 1;
        return attempts.Full(ladder.At(place - 1)) is { Stands: true } ? 0 : place - 1;
    }

    private static Found Narrowed(Ladder ladder, int low, Found high, Func<Change, Attempt?> assess)
    {
        while (high.Place - low > 1)
        {
            int middle = (low + high.Place) / 2;
            Change change = ladder.At(middle);
            if (assess(change) is { Stands: true } stands) high = new Found(middle, change, stands);
            else low = middle;
        }

        return high;
    }
}

/// <summary>A change after which no rule fails.</summary>
/// <param name="Place">Its place on its ladder.</param>
/// <param name="Change">The change.</param>
/// <param name="Attempt">What becomes of the build.</param>
internal readonly record struct Found(int Place, Change Change, Attempt Attempt);
