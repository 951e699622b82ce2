namespace Cablewright.Engine.Circuits;

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
/// <item><term>order</term><description>The nodes in the order of elimination.</description></item>
/// <item><term>firstNeighbour</term><description>Where each pivot's neighbours begin in <c>neighbour</c> and
/// <c>entry</c>.</description></item>
/// <item><term>firstPair</term><description>Where the entries between each pivot's neighbours begin in
/// <c>pairEntry</c>.</description></item>
/// </list>
/// </remarks>
internal sealed class Elimination
{
    private readonly int[] order;
    private readonly int[] firstNeighbour;
    private readonly int[] neighbour;
    private readonly int[] entry;
    private readonly int[] firstPair;
    private readonly int[] pairEntry;
    private readonly Dictionary<(int, int), int> entryOf = [];
    private readonly double[] diagonal;
    private readonly double[] entries;

    /// <summary>Plays the elimination through on the graph.</summary>
    /// <param name="count">How many unknowns there are.</param>
    /// <param name="edges">Which of them appear in one equation together.</param>
    public Elimination(int count, IEnumerable<(int, int)> edges)
    {
        var near = new SortedSet<int>[count];
        for (int i = 0; i < count; i++) near[i] = [];
        foreach ((int a, int b) in edges)
        {
            if (a == b) continue;
            near[a].Add(b);
            near[b].Add(a);
            EntryFor(a, b);
        }

        order = new int[count];
        firstNeighbour = new int[count + 1];
        firstPair = new int[count + 1];
        List<int> neighbours = [], neighbourEntries = [], pairs = [];
        var waiting = new SortedSet<(int Degree, int Node)>(Enumerable.Range(0, count).Select(node => (near[node].Count, node)));
        for (int k = 0; k < count; k++)
        {
            order[k] = waiting.Min.Node;
            waiting.Remove(waiting.Min);
            int[] left = [.. near[order[k]]];
            foreach (int node in left) waiting.Remove((near[node].Count, node));
            foreach (int node in left)
            {
                near[node].Remove(order[k]);
                neighbours.Add(node);
                neighbourEntries.Add(EntryFor(order[k], node));
            }

            pairs.AddRange(JoinAll(left, near));
            foreach (int node in left) waiting.Add((near[node].Count, node));
            firstNeighbour[k + 1] = neighbours.Count;
            firstPair[k + 1] = pairs.Count;
        }

        neighbour = [.. neighbours];
        entry = [.. neighbourEntries];
        pairEntry = [.. pairs];
        diagonal = new double[count];
        entries = new double[entryOf.Count];
    }

    /// <summary>
    /// The number of the entry between two different unknowns of one equation, for <see cref="AddOffDiagonal"/>.
    /// </summary>
    public int EntryOf(int a, int b) => entryOf[(Math.Max(a, b), Math.Min(a, b))];

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
        for (int k = 0; k < order.Length; k++)
        {
            double pivot = diagonal[order[k]];
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
        for (int k = 0; k < order.Length; k++)
        {
            double value = x[order[k]];
            for (int i = firstNeighbour[k]; i < firstNeighbour[k + 1]; i++) x[neighbour[i]] -= entries[entry[i]] * value;
        }

        for (int k = order.Length - 1; k >= 0; k--)
        {
            double value = x[order[k]] / diagonal[order[k]];
            for (int i = firstNeighbour[k]; i < firstNeighbour[k + 1]; i++) value -= entries[entry[i]] * x[neighbour[i]];
            x[order[k]] = value;
        }
    }

    /// <summary>
    /// Makes a pivot's neighbours each other's neighbours, as its elimination does, and numbers the entries between them.
    /// </summary>
    private IEnumerable<int> JoinAll(int[] nodes, SortedSet<int>[] near)
    {
        for (int i = 0; i < nodes.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                near[nodes[i]].Add(nodes[j]);
                near[nodes[j]].Add(nodes[i]);
                yield return EntryFor(nodes[i], nodes[j]);
            }
        }
    }

    private int EntryFor(int a, int b)
    {
        (int, int) key = (Math.Max(a, b), Math.Min(a, b));
        if (!entryOf.TryGetValue(key, out int number))
        {
            number = entryOf.Count;
            entryOf.Add(key, number);
        }

        return number;
    }
}
