namespace Cablewright.Engine.Text;

/// <summary>Finds the word that somebody most likely meant.</summary>
public static class NearestWord
{
    private const int LongestCompared = 64;

    /// <summary>The known word that is the fewest letters away, or <c>null</c> where none is near.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="known">What could have been meant.</param>
    public static string? Of(string written, IEnumerable<string> known)
    {
        if (written.Length > LongestCompared) return null;
        string? nearest = null;
        int fewest = Math.Max(1, written.Length / 3) + 1;
        foreach (string word in known.Where(word => Math.Abs(word.Length - written.Length) < fewest))
        {
            int distance = Distance(written.ToUpperInvariant(), word.ToUpperInvariant());
            if (distance < fewest) (nearest, fewest) = (word, distance);
        }

        return nearest;
    }

    /// <summary>Damerau's distance, with neighbours exchanged counted once (optimal string alignment).</summary>
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int change = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
