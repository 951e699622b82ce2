using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Network;

/// <summary>The node equations of a circuit: which node is which unknown, and where an element's conductance goes.</summary>
internal sealed class NodeEquations
{
    /// <summary>An element put into the equations, and an entry of them eliminated, in runs solved.</summary>
    private const double CostOfElement = 0.04, CostOfEntry = 0.003;

    private readonly int[] unknownOf;
    private readonly Elimination matrix;

    /// <summary>Fixes the shape of the equations.</summary>
    /// <param name="nodeCount">How many nodes there are.</param>
    /// <param name="joined">The node pairs that elements join.</param>
    /// <param name="held">The nodes whose potential is given.</param>
    public NodeEquations(int nodeCount, IEnumerable<(int From, int To)> joined, IEnumerable<int> held)
    {
        unknownOf = new int[nodeCount];
        foreach (int node in held) unknownOf[node] = -1;
        for (int node = 0; node < nodeCount; node++)
        {
            if (unknownOf[node] >= 0) unknownOf[node] = Count++;
        }

        matrix = new Elimination(new EliminationOrder(Count, joined
            .Select(pair => (unknownOf[pair.From], unknownOf[pair.To]))
            .Where(pair => pair.Item1 >= 0 && pair.Item2 >= 0)));
    }

    private NodeEquations(int count, int[] unknownOf, Elimination matrix)
    {
        Count = count;
        this.unknownOf = unknownOf;
        this.matrix = matrix;
    }

    /// <summary>How many unknowns there are.</summary>
    public int Count { get; }

    /// <summary>The unknown of a node, or -1 where its potential is given.</summary>
    public int UnknownOf(int node) => unknownOf[node];

    /// <summary>Where an element between two nodes stands in the equations.</summary>
    public Link LinkOf(int from, int to)
    {
        int a = unknownOf[from], b = unknownOf[to];
        return new Link(from, to, a, b, a >= 0 && b >= 0 && a != b ? matrix.EntryOf(a, b) : -1);
    }

    /// <summary>What it costs to put elements into the equations and to solve them, in runs solved.</summary>
    /// <param name="elements">How many elements.</param>
    public double CostOf(int elements) => CostOfElement * (elements + Count) + CostOfEntry * matrix.EntriesEliminated;

    /// <summary>Empty equations of the same shape.</summary>
    public NodeEquations Another() => new(Count, unknownOf, matrix.Another());

    /// <summary>Empties the matrix.</summary>
    public void Clear() => matrix.Clear();

    /// <summary>Adds an element's conductance.</summary>
    public void Stamp(Link link, double siemens)
    {
        if (link.FromUnknown >= 0) matrix.AddDiagonal(link.FromUnknown, siemens);
        if (link.ToUnknown >= 0) matrix.AddDiagonal(link.ToUnknown, siemens);
        if (link.Entry >= 0) matrix.AddOffDiagonal(link.Entry, -siemens);
    }

    /// <summary>Takes a current out of an element's first node and puts it into its second.</summary>
    public static void Draw(Link link, double amps, Span<double> rightSide)
    {
        if (link.FromUnknown >= 0) rightSide[link.FromUnknown] -= amps;
        if (link.ToUnknown >= 0) rightSide[link.ToUnknown] += amps;
    }

    /// <summary>Factors the matrix; <c>false</c> where it is not positive definite.</summary>
    public bool Factor() => matrix.Factor();

    /// <summary>Solves with the factors; the right side becomes the solution.</summary>
    public void Solve(Span<double> rightSide) => matrix.Solve(rightSide);

    /// <summary>The responses to single currents, once the matrix is factored.</summary>
    public UnitResponse Responses(WorkMeter meter) => new(matrix, Count, meter);

    /// <summary>An element's place in the equations.</summary>
    internal readonly record struct Link(int From, int To, int FromUnknown, int ToUnknown, int Entry);
}
