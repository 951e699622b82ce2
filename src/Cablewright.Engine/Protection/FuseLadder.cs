using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Protection;

/// <summary>The families that a fuse which is left open at an end of a run may be of, in the order in which they are
/// tried.</summary>
/// <remarks>
/// Of these the fuse is of the first that carries the full current in a rating up to its step, or that is made in smaller ratings
/// than all after it, where the conductor has less ampacity than those; the last takes what is left. More current or more
/// ampacity never comes to an earlier one, so between two of each only the families between theirs are met.
/// </remarks>
internal sealed class FuseLadder
{
    private readonly double airCelsius;
    private readonly double[] upTo;
    private readonly double[] smallestLater;

    /// <summary>A ladder.</summary>
    /// <param name="families">At least one, the first to be tried first.</param>
    /// <param name="chosenUpTo">The largest rating in which one is taken while others come after it.</param>
    /// <param name="airCelsius">The air of the run.</param>
    public FuseLadder(IReadOnlyList<FuseFamily> families, Func<FuseFamily, double> chosenUpTo, double airCelsius)
    {
        Families = families;
        this.airCelsius = airCelsius;
        upTo = [.. families.Select(chosenUpTo)];
        smallestLater = new double[families.Count];
        double smallest = double.PositiveInfinity;
        for (int i = families.Count - 1; i >= 0; i--)
        {
            smallestLater[i] = smallest;
            smallest = Math.Min(smallest, families[i].RatingsAmps.Values[0]);
        }
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<FuseFamily> Families { get; }

    /// <summary>The family of a fuse.</summary>
    /// <param name="fullAmps">The full current that it is chosen for.</param>
    /// <param name="ampacity">The ampacity of the conductor that it stands in.</param>
    public FuseFamily For(double fullAmps, double ampacity) => Families[IndexFor(fullAmps, ampacity)];

    /// <summary>All that a fuse may be of whose full current and ampacity lie between two of each.</summary>
    public IEnumerable<FuseFamily> Between((double FullAmps, double Ampacity) least, (double FullAmps, double Ampacity) most)
    {
        int first = IndexFor(least.FullAmps, least.Ampacity), last = IndexFor(most.FullAmps, most.Ampacity);
        return Families.Skip(first).Take(Math.Max(last - first, 0) + 1);
    }

    /// <summary>The smallest rating of a family that carries a current continuously in the air of the run.</summary>
    public double? SmallestCarrying(FuseFamily family, double amps) =>
        family.SmallestCarrying(amps / family.HotShareAt(airCelsius));

    private int IndexFor(double fullAmps, double ampacity)
    {
        for (int i = 0; i < upTo.Length - 1; i++)
        {
            if (ampacity < smallestLater[i]) return i;
            if (SmallestCarrying(Families[i], fullAmps) is { } rating && !Significant.Exceeds(rating, upTo[i])) return i;
        }

        return upTo.Length - 1;
    }
}
