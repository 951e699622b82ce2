namespace Cablewright.Engine.Circuits;

/// <summary>
/// In which order the unknowns of a set of equations are eliminated, and which entries each step touches: the elimination played
/// through on the graph, without numbers.
/// </summary>
/// <remarks>
/// The next pivot is the unknown with the fewest neighbours left, the lowest number among equals. Its neighbours become each
/// other's. The heap keeps outdated degrees and passes over them when they come up, which costs less than taking them out.
/// </remarks>
internal sealed class EliminationOrder
{
    private readonly List<(int Node, int Entry)>[] near;
    private readonly int[] position;
    private readonly List<int> neighbours = [];
    private readonly List<int> entries = [];
    private readonly List<int> pairs = [];

    /// <summary>Plays the elimination through.</summary>
    /// <param name="count">How many unknowns there are.</param>
    /// <param name="edges">Which of them appear in one equation together.</param>
    public EliminationOrder(int count, IEnumerable<(int, int)> edges)
    {
        near = new List<(int, int)>[count];
        for (int i = 0; i < count; i++) near[i] = [];
        foreach ((int a, int b) in edges)
        {
            if (a != b) EntryBetween(a, b);
        }

        Pivots = new int[count];
        FirstNeighbour = new int[count + 1];
        FirstPair = new int[count + 1];
        position = new int[count];
        Array.Fill(position, -1);
        var waiting = new PriorityQueue<int, long>(count);
        for (int node = 0; node < count; node++) waiting.Enqueue(node, Rank(node));
        for (int k = 0; k < count; k++) Eliminate(k, Next(waiting), waiting);
    }

    /// <summary>The unknowns in the order of their elimination.</summary>
    public int[] Pivots { get; }

    /// <summary>Where each pivot's neighbours begin in <see cref="Neighbours"/> and <see cref="Entries"/>.</summary>
    public int[] FirstNeighbour { get; }

    /// <summary>Where the entries between each pivot's neighbours begin in <see cref="PairEntries"/>.</summary>
    public int[] FirstPair { get; }

    /// <summary>The unknowns that are left beside each pivot.</summary>
    public int[] Neighbours => [.. neighbours];

    /// <summary>The entries between each pivot and those.</summary>
    public int[] Entries => [.. entries];

    /// <summary>The entries between each pivot's neighbours, two by two.</summary>
    public int[] PairEntries => [.. pairs];

    /// <summary>How many entries there are off the diagonal.</summary>
    public int EntryCount { get; private set; }

    /// <summary>The step in which an unknown is eliminated.</summary>
    public int StepOf(int unknown) => position[unknown];

    /// <summary>The number of the entry between two different unknowns of one equation.</summary>
    public int EntryOf(int a, int b)
    {
        (int first, int second) = position[a] < position[b] ? (a, b) : (b, a);
        int begin = FirstNeighbour[position[first]], end = FirstNeighbour[position[first] + 1];
        return entries[neighbours.IndexOf(second, begin, end - begin)];
    }

    private long Rank(int node) => (long)near[node].Count * near.Length + node;

    private int Next(PriorityQueue<int, long> waiting)
    {
        while (true)
        {
            waiting.TryDequeue(out int node, out long rank);
            if (position[node] < 0 && rank == Rank(node)) return node;
        }
    }

    private void Eliminate(int step, int pivot, PriorityQueue<int, long> waiting)
    {
        Pivots[step] = pivot;
        position[pivot] = step;
        List<(int Node, int Entry)> left = near[pivot];
        for (int i = 0; i < left.Count; i++)
        {
            Leave(near[left[i].Node], pivot);
            neighbours.Add(left[i].Node);
            entries.Add(left[i].Entry);
            for (int j = 0; j < i; j++) pairs.Add(EntryBetween(left[i].Node, left[j].Node));
        }

        foreach ((int node, _) in left) waiting.Enqueue(node, Rank(node));
        FirstNeighbour[step + 1] = neighbours.Count;
        FirstPair[step + 1] = pairs.Count;
    }

    private static void Leave(List<(int Node, int Entry)> list, int node)
    {
        int at = list.FindIndex(other => other.Node == node);
        list[at] = list[^1];
        list.RemoveAt(list.Count - 1);
    }

    /// <summary>The entry between two unknowns; a new one where they were not neighbours.</summary>
    private int EntryBetween(int a, int b)
    {
        (int fewer, int other) = near[a].Count < near[b].Count ? (a, b) : (b, a);
        foreach ((int node, int entry) in near[fewer])
        {
            if (node == other) return entry;
        }

        near[a].Add((b, EntryCount));
        near[b].Add((a, EntryCount));
        return EntryCount++;
    }
}
