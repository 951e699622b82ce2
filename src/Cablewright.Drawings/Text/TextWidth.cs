using System.Globalization;
using System.Reflection;
using System.Text.Json;

namespace Cablewright.Drawings.Text;

/// <summary>How wide a text is, estimated without a font: the page's own is not known here.</summary>
internal static class TextWidth
{
    /// <summary>
    /// The widths are those of a narrow sans serif; the widest that a system puts in its place is a fifth wider.
    /// </summary>
    private const double Safety = 1.2;

    /// <summary>A bold letter is wider by so much.</summary>
    private const double BoldFactor = 1.07;

    /// <summary>A letter that the table does not know is taken to be as wide as the size, as an ideograph is.</summary>
    private const double Unknown = 1;

    private static readonly Dictionary<int, double> Widths = Read();

    /// <summary>The width of a text on one line, no less than it will be.</summary>
    public static double Of(string text, double size, bool isBold)
    {
        double sum = 0;
        foreach (System.Text.Rune letter in text.EnumerateRunes())
        {
            if (IsWidthless(letter)) continue;
            sum += Widths.GetValueOrDefault(letter.Value, Unknown);
        }

        return sum * size * Safety * (isBold ? BoldFactor : 1);
    }

    private static bool IsWidthless(System.Text.Rune letter) =>
        System.Text.Rune.GetUnicodeCategory(letter) is UnicodeCategory.Format or UnicodeCategory.NonSpacingMark;

    private static Dictionary<int, double> Read()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Text/advance-widths.json")!;
        using JsonDocument table = JsonDocument.Parse(stream);
        return table.RootElement.GetProperty("rows").EnumerateArray()
            .SelectMany(row => row.GetProperty("characters").GetString()!.EnumerateRunes()
                .Select(letter => (letter.Value, Width: row.GetProperty("width").GetDouble() / 1000)))
            .ToDictionary(each => each.Value, each => each.Width);
    }
}
