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
        string units = string.Join('|', UnitTable.All
            .Where(entry => entry.Unit.Kind == kind)
            .Select(entry => Regex.Escape(entry.Spelling))
            .Order(StringComparer.Ordinal));
        string part = $"\\s*{(kind == QuantityKind.Temperature ? SignedNumber : Number)}\\s*({units})";
        return kind == QuantityKind.Length ? $"^({part}(?=\\s|$))+\\s*$" : $"^{part}\\s*$";
    }
}
