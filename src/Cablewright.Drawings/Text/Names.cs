using System.Text;
using System.Xml;

namespace Cablewright.Drawings.Text;

/// <summary>Text that a caller wrote, made safe to stand in a drawing or a page.</summary>
internal static class Names
{
    private const char FirstStrongIsolate = '\u2068';
    private const char PopIsolate = '\u2069';

    /// <summary>
    /// The text without what XML does not allow and without the marks that turn the direction of what follows.
    /// </summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            char letter = text[i];
            if (char.IsHighSurrogate(letter) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                clean.Append(letter).Append(text[++i]);
            else if (char.IsControl(letter))
                clean.Append(' ');
            else if (XmlConvert.IsXmlChar(letter) && !TurnsDirection(letter))
                clean.Append(letter);
        }

        return clean.ToString().Trim();
    }

    /// <summary>The text so that its direction, right to left perhaps, ends where it ends.</summary>
    public static string Isolated(string clean) => FirstStrongIsolate + clean + PopIsolate;

    private static bool TurnsDirection(char letter) => letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
