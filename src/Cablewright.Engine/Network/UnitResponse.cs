using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Network;

/// <summary>
/// What one ampere does to the potentials that is drawn from one unknown and put back at another, worked out only where it is
/// asked for.
/// </summary>
/// <remarks>
/// Method: in L D Lᵀ x = b a right-hand side with two entries stays empty but for the unknowns on the ways from those two to the
/// root of the elimination tree, in which an unknown's parent is its first neighbour to be eliminated after it. And an unknown
/// of the solution needs only those on its own way to the root. In a vehicle these ways are a few steps, however many runs
/// there are.
/// </remarks>
internal sealed class UnitResponse
{
    /// <summary>A step of a sweep, and each neighbour that it looks at, in runs solved.</summary>
    private const double CostOfStep = 0.03, CostOfNeighbour = 0.005;

    private readonly Elimination matrix;
    private readonly WorkMeter meter;
    private readonly double[] x;
    private readonly int[] isEntered;
    private readonly int[] isSolved;
    private readonly int[] way;
    private (int From, int To) ends = (-1, -1);
    private int number;

    /// <summary>
    /// Prepares the responses of a factored matrix of a number of unknowns; the meter counts what is asked for.
    /// </summary>
    public UnitResponse(Elimination matrix, int count, WorkMeter meter)
    {
        this.matrix = matrix;
        this.meter = meter;
        x = new double[count];
        isEntered = new int[count];
        isSolved = new int[count];
        way = new int[count];
    }

    /// <summary>The change of an unknown's potential, V/A; 0 for a fixed-potential node.</summary>
    /// <param name="from">The unknown that the ampere is drawn from, or -1 for a fixed-potential node.</param>
    /// <param name="to">The unknown where it is put back, or -1.</param>
    /// <param name="unknown">The unknown that is asked for, or -1.</param>
    public double At(int from, int to, int unknown)
    {
        if (unknown < 0) return 0;
        if (ends != (from, to)) Enter(from, to);
        int length = 0;
        double cost = CostOfStep;
        for (int step = matrix.StepOf(unknown); step >= 0 && isSolved[step] != number; step = matrix.ParentOf(step))
            way[length++] = step;
        while (length > 0)
        {
            int step = way[--length];
            if (isEntered[step] != number) x[matrix.UnknownAt(step)] = 0;
            matrix.Back(step, x);
            cost += CostOfStep + CostOfNeighbour * matrix.NeighboursOf(step);
            isSolved[step] = number;
        }

        meter.Count(cost);
        return x[unknown];
    }

    private void Enter(int from, int to)
    {
        ends = (from, to);
        number++;
        int one = Mark(from, -1), other = Mark(to, 1);
        while (one >= 0 || other >= 0)
        {
            bool isOnes = other < 0 || (one >= 0 && one <= other), isOthers = one < 0 || (other >= 0 && other <= one);
            int step = isOnes ? one : other, next = matrix.ParentOf(step);
            matrix.Forward(step, x);
            meter.Count(CostOfStep + CostOfNeighbour * matrix.NeighboursOf(step));
            if (isOnes) one = next;
            if (isOthers) other = next;
        }
    }

    /// <summary>Puts a current in at an unknown and empties the way from it to the root, which the sweep goes over.</summary>
    private int Mark(int unknown, double amps)
    {
        if (unknown < 0) return -1;
        int first = matrix.StepOf(unknown);
        for (int step = first; step >= 0 && isEntered[step] != number; step = matrix.ParentOf(step))
        {
            isEntered[step] = number;
            x[matrix.UnknownAt(step)] = 0;
        }

        x[unknown] += amps;
        return first;
    }
}
