namespace Cablewright.Service.Json;

/// <summary>Finds the name that was probably meant.</summary>
internal static class Nearest
{
    private const int Longest = 40;

    /// <summary>The sentence that asks for it, or nothing.</summary>
    public static string Hint(string given, IEnumerable<string> known) =>
        To(given, known) is { } meant ? $"; did you mean \"{meant}\"?" : "";

    /// <summary>The known name with the fewest edits from the one given, if those are few for its length.</summary>
    private static string? To(string given, IEnumerable<string> known)
    {
        if (given.Length > Longest) return null;
        string? nearest = null;
        int fewest = Math.Max(1, given.Length / 3) + 1;
        foreach (string name in known)
        {
            int edits = Edits(given.ToUpperInvariant(), name.ToUpperInvariant());
            if (edits >= fewest) continue;
            (nearest, fewest) = (name, edits);
        }

        return nearest;
    }

    /// <summary>Optimal string alignment: insertions, deletions, replacements and swapped neighbours count one each.</summary>
    private static int Edits(string a, string b)
    {
        int[,] cost = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) cost[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) cost[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int edits = Math.Min(replaced, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                cost[i, j] = swapped ? Math.Min(edits, cost[i - 2, j - 2] + 1) : edits;
            }
        }

        return cost[a.Length, b.Length];
    }
}
