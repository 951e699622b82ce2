using System.Globalization;

namespace Cablewright.Drawings.Text;

/// <summary>Breaks a text into lines that fit.</summary>
internal static class Lines
{
    private const string Ellipsis = "...";

    /// <summary>The lines of a text; where they are more than allowed, the last one ends in an ellipsis.</summary>
    public static IReadOnlyList<string> Of(string text, double width, double size, bool isBold, int most)
    {
        List<string> lines = Broken(text, width, size, isBold);
        if (lines.Count <= most) return lines;
        string last = lines[most - 1] + Ellipsis;
        while (TextWidth.Of(last, size, isBold) > width) last = WithoutLastLetter(last[..^Ellipsis.Length]) + Ellipsis;
        return [.. lines[..(most - 1)], last];
    }

    private static List<string> Broken(string text, double width, double size, bool isBold)
    {
        var lines = new List<string>();
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (Fits(longer))
            {
                line = longer;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            line = word;
            while (!Fits(line))
            {
                string part = Beginning(line);
                lines.Add(part);
                line = line[part.Length..];
            }
        }

        if (line.Length > 0) lines.Add(line);
        return lines;

        bool Fits(string candidate) => TextWidth.Of(candidate, size, isBold) <= width;

        // As many letters of a word as fit, and at least one, so that it comes to an end.
        string Beginning(string word)
        {
            string part = "";
            foreach (string letter in Letters(word))
            {
                if (part.Length > 0 && !Fits(part + letter)) break;
                part += letter;
            }

            return part;
        }
    }

    private static string WithoutLastLetter(string text) => string.Concat(Letters(text).SkipLast(1));

    /// <summary>What a reader takes for one letter is not taken apart.</summary>
    private static IEnumerable<string> Letters(string text)
    {
        TextElementEnumerator letters = StringInfo.GetTextElementEnumerator(text);
        while (letters.MoveNext()) yield return letters.GetTextElement();
    }
}
