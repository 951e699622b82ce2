namespace Cablewright.Engine.Numerics;

/// <summary>Things that are joined to each other, step by step, into sets.</summary>
internal sealed class DisjointSets
{
    private readonly int[] parent;

    public DisjointSets(int count)
    {
        parent = new int[count];
        for (int i = 0; i < count; i++) parent[i] = i;
    }

    /// <summary>The number of the set that a thing is in: its lowest member.</summary>
    public int SetOf(int thing)
    {
        while (parent[thing] != thing) thing = parent[thing] = parent[parent[thing]];
        return thing;
    }

    public void Join(int a, int b)
    {
        a = SetOf(a);
        b = SetOf(b);
        parent[Math.Max(a, b)] = Math.Min(a, b);
    }
}
