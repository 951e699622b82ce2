namespace Cablewright.Engine.Network;

/// <summary>
/// In which order the unknowns of a set of equations are eliminated, and which entries each step touches: the elimination played
/// through on the graph, without numbers.
/// </summary>
/// <remarks>
/// The next pivot is the unknown with the fewest neighbours left, the lowest number among equals. Its neighbours become each
/// other's. The heap keeps outdated degrees and passes over them when they come up, which costs less than taking them out; so do
/// the lists of neighbours with those that are eliminated. An entry is two halves, one in the list of each of its unknowns:
/// halves 2 n and 2 n + 1 are entry n.
/// </remarks>
internal sealed class EliminationOrder
{
    private readonly int[] firstHalf;
    private readonly int[] degree;
    private readonly int[] position;
    private readonly List<(int To, int Next)> halves;

    /// <summary>Plays the elimination through.</summary>
    /// <param name="count">How many unknowns there are.</param>
    /// <param name="edges">Which of them appear in one equation together.</param>
    public EliminationOrder(int count, IEnumerable<(int, int)> edges)
    {
        firstHalf = new int[count];
        Array.Fill(firstHalf, -1);
        degree = new int[count];
        position = new int[count];
        Array.Fill(position, -1);
        halves = new List<(int, int)>(4 * count);
        foreach ((int a, int b) in edges)
        {
            if (a != b) EntryBetween(a, b);
        }

        Pivots = new int[count];
        FirstNeighbour = new int[count + 1];
        FirstPair = new int[count + 1];
        List<int> neighbours = new(2 * count), entries = new(2 * count), pairs = new(count);
        var waiting = new PriorityQueue<int, long>(2 * count);
        for (int node = 0; node < count; node++) waiting.Enqueue(node, Rank(node));
        for (int step = 0; step < count; step++)
        {
            int pivot = Next(waiting);
            (Pivots[step], position[pivot]) = (pivot, step);
            Meet(pivot, neighbours, entries, pairs);
            for (int i = FirstNeighbour[step]; i < neighbours.Count; i++) waiting.Enqueue(neighbours[i], Rank(neighbours[i]));
            FirstNeighbour[step + 1] = neighbours.Count;
            FirstPair[step + 1] = pairs.Count;
        }

        (Neighbours, Entries, PairEntries) = ([.. neighbours], [.. entries], [.. pairs]);
    }

    /// <summary>The unknowns in the order of their elimination.</summary>
    public int[] Pivots { get; }

    /// <summary>Where each pivot's neighbours begin in <see cref="Neighbours"/> and <see cref="Entries"/>.</summary>
    public int[] FirstNeighbour { get; }

    /// <summary>Where the entries between each pivot's neighbours begin in <see cref="PairEntries"/>.</summary>
    public int[] FirstPair { get; }

    /// <summary>The unknowns that are left beside each pivot.</summary>
    public int[] Neighbours { get; }

    /// <summary>The entries between each pivot and those.</summary>
    public int[] Entries { get; }

    /// <summary>The entries between each pivot's neighbours, two by two.</summary>
    public int[] PairEntries { get; }

    /// <summary>How many entries there are off the diagonal.</summary>
    public int EntryCount => halves.Count / 2;

    /// <summary>The step in which an unknown is eliminated.</summary>
    public int StepOf(int unknown) => position[unknown];

    /// <summary>The number of the entry between two different unknowns of one equation.</summary>
    public int EntryOf(int a, int b)
    {
        (int first, int second) = position[a] < position[b] ? (a, b) : (b, a);
        int begin = FirstNeighbour[position[first]], end = FirstNeighbour[position[first] + 1];
        return Entries[Array.IndexOf(Neighbours, second, begin, end - begin)];
    }

    private long Rank(int node) => (long)degree[node] * degree.Length + node;

    private int Next(PriorityQueue<int, long> waiting)
    {
        while (true)
        {
            waiting.TryDequeue(out int node, out long rank);
            if (position[node] < 0 && rank == Rank(node)) return node;
        }
    }

    /// <summary>Notes the neighbours that a pivot leaves, and makes them each other's.</summary>
    private void Meet(int pivot, List<int> neighbours, List<int> entries, List<int> pairs)
    {
        int begin = neighbours.Count;
        for (int half = firstHalf[pivot]; half >= 0; half = halves[half].Next)
        {
            int node = halves[half].To;
            if (position[node] >= 0) continue;
            degree[node]--;
            for (int i = begin; i < neighbours.Count; i++) pairs.Add(EntryBetween(node, neighbours[i]));
            neighbours.Add(node);
            entries.Add(half / 2);
        }
    }

    /// <summary>The entry between two unknowns; a new one where they were not neighbours.</summary>
    private int EntryBetween(int a, int b)
    {
        (int fewer, int other) = degree[a] < degree[b] ? (a, b) : (b, a);
        for (int half = firstHalf[fewer]; half >= 0; half = halves[half].Next)
        {
            if (halves[half].To == other) return half / 2;
        }

        Link(a, b);
        Link(b, a);
        return EntryCount - 1;
    }

    private void Link(int from, int to)
    {
        halves.Add((to, firstHalf[from]));
        firstHalf[from] = halves.Count - 1;
        degree[from]++;
    }
}
