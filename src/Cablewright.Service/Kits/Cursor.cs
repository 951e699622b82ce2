using System.Buffers.Text;
using System.Text;
using System.Text.RegularExpressions;
using Cablewright.Contract;

namespace Cablewright.Service.Kits;

/// <summary>Where a list of kits goes on: behind the kit of which it holds the number.</summary>
internal static partial class Cursor
{
    /// <summary>The cursor behind a kit.</summary>
    public static string Behind(string sku) => Base64Url.EncodeToString(Encoding.ASCII.GetBytes(sku));

    /// <summary>The number in a cursor; <c>null</c> where the text is none.</summary>
    public static string? Read(string text)
    {
        if (text.Length > ContractLimits.LongestCursor || !Base64Url.IsValid(text)) return null;
        string sku = Encoding.ASCII.GetString(Base64Url.DecodeFromChars(text));
        return Identifier().IsMatch(sku) ? sku : null;
    }

    [GeneratedRegex(ContractLimits.IdPattern, RegexOptions.ECMAScript)]
    private static partial Regex Identifier();
}
