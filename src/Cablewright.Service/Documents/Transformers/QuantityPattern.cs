using System.Text.RegularExpressions;
using Cablewright.Contract.Quantities;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>The notations of a quantity as a regular expression (ECMA-262), from the very table that reads them.</summary>
internal static class QuantityPattern
{
    private const string Number = "[0-9]+(\\.[0-9]+)?";
    private const string SignedNumber = "[-\u2212]?" + Number;

    /// <summary>Matches what may be a quantity of one of these kinds; its range is checked beyond it.</summary>
    public static string Of(IEnumerable<QuantityKind> kinds) => string.Join('|', kinds.Select(Of));

    private static string Of(QuantityKind kind)
    {
        string[] units = [.. UnitTable.All.Where(entry => entry.Unit.Kind == kind).Select(entry => entry.Spelling)
            .Order(StringComparer.Ordinal)];
        string last = $"{(kind == QuantityKind.Temperature ? SignedNumber : Number)}\\s*({AnyOf(units)})";
        return kind switch
        {
            QuantityKind.Length => $"^\\s*({Earlier(units)})*{last}\\s*$",
            QuantityKind.Power => $"^\\s*{last}(\\s*[Rr][Mm][Ss])?\\s*$",
            _ => $"^\\s*{last}\\s*$",
        };
    }

    /// <summary>A part that another follows, behind a blank but for a sign of feet or inches.</summary>
    private static string Earlier(string[] units)
    {
        string[] signs = [.. units.Where(unit => !char.IsLetter(unit[0]))];
        return $"{Number}\\s*({AnyOf(units.Except(signs))})\\s+|{Number}\\s*({AnyOf(signs)})\\s*";
    }

    private static string AnyOf(IEnumerable<string> spellings) => string.Join('|', spellings.Select(Regex.Escape));
}
