namespace Cablewright.Engine.Network;

/// <summary>
/// Gaussian elimination of a circuit's node equations, in an order fixed once for its shape.
/// </summary>
/// <remarks>
/// <para>Method: the matrix is symmetric, so A = L D Lᵀ, one node at a time, always the one with the fewest neighbours left.
/// On a tree that is the sweep from the leaves to the root and back, with nothing filled in; a loop fills in one entry.</para>
/// <para>Steps: (1) at construction, play the elimination through on the graph alone and note which entries each pivot
/// touches; (2) <see cref="Factor"/> runs through the notes with numbers; (3) <see cref="Solve"/> goes forward and back.</para>
/// <list type="table">
/// <item><term>diagonal</term><description>A's diagonal, then D.</description></item>
/// <item><term>entries</term><description>A below its diagonal where it is not 0 or gets filled in, then L.</description></item>
/// <item><term>pivots</term><description>The nodes in the order of elimination.</description></item>
/// <item><term>firstNeighbour</term><description>Where each pivot's neighbours begin in <c>neighbour</c> and
/// <c>entry</c>.</description></item>
/// <item><term>firstPair</term><description>Where the entries between each pivot's neighbours begin in
/// <c>pairEntry</c>.</description></item>
/// </list>
/// </remarks>
internal sealed class Elimination
{
    private readonly EliminationOrder order;
    private readonly int[] pivots;
    private readonly int[] firstNeighbour;
    private readonly int[] neighbour;
    private readonly int[] entry;
    private readonly int[] firstPair;
    private readonly int[] pairEntry;
    private readonly double[] diagonal;
    private readonly double[] entries;

    /// <summary>Makes room for the numbers.</summary>
    public Elimination(EliminationOrder order)
    {
        this.order = order;
        pivots = order.Pivots;
        firstNeighbour = order.FirstNeighbour;
        neighbour = order.Neighbours;
        entry = order.Entries;
        firstPair = order.FirstPair;
        pairEntry = order.PairEntries;
        diagonal = new double[pivots.Length];
        entries = new double[order.EntryCount];
    }

    /// <summary>
    /// The number of the entry between two different unknowns of one equation, for <see cref="AddOffDiagonal"/>.
    /// </summary>
    public int EntryOf(int a, int b) => order.EntryOf(a, b);

    /// <summary>The step in which an unknown is eliminated.</summary>
    public int StepOf(int unknown) => order.StepOf(unknown);

    /// <summary>How many entries are touched when the matrix is factored, each as often as it is.</summary>
    public int EntriesEliminated => pairEntry.Length + neighbour.Length;

    /// <summary>How many neighbours are left beside the unknown that is eliminated in a step.</summary>
    public int NeighboursOf(int step) => firstNeighbour[step + 1] - firstNeighbour[step];

    /// <summary>The unknown that is eliminated in a step.</summary>
    public int UnknownAt(int step) => pivots[step];

    /// <summary>The step in which the first of a pivot's neighbours is eliminated; -1 where none is left.</summary>
    public int ParentOf(int step)
    {
        int first = int.MaxValue;
        for (int i = firstNeighbour[step]; i < firstNeighbour[step + 1]; i++)
            first = Math.Min(first, order.StepOf(neighbour[i]));
        return first == int.MaxValue ? -1 : first;
    }

    /// <summary>An empty matrix that is eliminated in the same order.</summary>
    public Elimination Another() => new(order);

    /// <summary>Empties the matrix.</summary>
    public void Clear()
    {
        Array.Clear(diagonal);
        Array.Clear(entries);
    }

    /// <summary>Adds to the diagonal.</summary>
    public void AddDiagonal(int i, double value) => diagonal[i] += value;

    /// <summary>Adds to an entry off the diagonal.</summary>
    public void AddOffDiagonal(int number, double value) => entries[number] += value;

    /// <summary>Factors the matrix in place.</summary>
    /// <returns><c>false</c> where it is not positive definite.</returns>
    public bool Factor()
    {
        for (int k = 0; k < pivots.Length; k++)
        {
            double pivot = diagonal[pivots[k]];
            if (!(pivot > 0)) return false;
            int first = firstNeighbour[k], pair = firstPair[k];
            for (int i = first; i < firstNeighbour[k + 1]; i++)
            {
                double multiplier = entries[entry[i]] / pivot;
                for (int j = first; j < i; j++) entries[pairEntry[pair++]] -= multiplier * entries[entry[j]] * pivot;
                diagonal[neighbour[i]] -= multiplier * entries[entry[i]];
                entries[entry[i]] = multiplier;
            }
        }

        return true;
    }

    /// <summary>Solves with the factors; the right-hand side becomes the solution.</summary>
    public void Solve(Span<double> x)
    {
        for (int k = 0; k < pivots.Length; k++) Forward(k, x);
        for (int k = pivots.Length - 1; k >= 0; k--) Back(k, x);
    }

    /// <summary>Takes one pivot out of the right-hand sides of its neighbours.</summary>
    public void Forward(int step, Span<double> x)
    {
        double value = x[pivots[step]];
        for (int i = firstNeighbour[step]; i < firstNeighbour[step + 1]; i++) x[neighbour[i]] -= entries[entry[i]] * value;
    }

    /// <summary>Finds one pivot from its neighbours, which are eliminated after it.</summary>
    public void Back(int step, Span<double> x)
    {
        double value = x[pivots[step]] / diagonal[pivots[step]];
        for (int i = firstNeighbour[step]; i < firstNeighbour[step + 1]; i++) value -= entries[entry[i]] * x[neighbour[i]];
        x[pivots[step]] = value;
    }
}
