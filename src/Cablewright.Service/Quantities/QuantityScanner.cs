using Cablewright.Contract;
using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>What the scanner made of a text: a value, or a code and the place of the trouble.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Value">In the unit that the kind is read into, exact wherever decimal places can be.</param>
/// <param name="Code">One of <see cref="QuantityCodes"/>, or <c>null</c> where all is well.</param>
/// <param name="At">The offending part of the text.</param>
internal readonly record struct Scanned(QuantityKind Kind, decimal Value, string? Code, Range At);

/// <summary>Reads <c>number unit</c>, and for lengths several of them, in decimal arithmetic and without allocating.</summary>
internal ref struct QuantityScanner
{
    public const int LongestText = ContractLimits.QuantityLength;

    /// <summary>
    /// As many as a program prints of a double, 17 with a zero before them, and few enough that no sum or product overflows a
    /// decimal.
    /// </summary>
    public const int MostDigits = 18;

    /// <summary>Signs of feet and inches, each a unit by itself: <c>16'6"</c> has no blank.</summary>
    private const string Signs = "'\u2019\u2032\"\u201d\u2033";

    /// <summary>What may stand after a power: the continuous output, which is what a build states.</summary>
    private const string Continuous = "RMS";

    private readonly ReadOnlySpan<char> text;
    private readonly ReadOnlySpan<QuantityKind> wanted;
    private int at;

    private QuantityScanner(ReadOnlySpan<char> text, ReadOnlySpan<QuantityKind> wanted)
    {
        this.text = text;
        this.wanted = wanted;
    }

    /// <summary>Reads a text in which a spelling that several kinds share means the one that is wanted.</summary>
    public static Scanned Scan(ReadOnlySpan<char> text, ReadOnlySpan<QuantityKind> wanted)
    {
        if (text.Length > LongestText) return Fail(QuantityCodes.TooLong, ..);
        int comma = text.IndexOf(',');
        return comma >= 0 ? Fail(QuantityCodes.Comma, comma..(comma + 1)) : new QuantityScanner(text, wanted).Sum();
    }

    private Scanned Sum()
    {
        SkipBlanks();
        if (at == text.Length) return Fail(QuantityCodes.Empty, ..);
        Scanned sum = Part(out decimal lastSize);
        while (sum.Code is null && at < text.Length)
        {
            int start = at;
            Scanned part = Part(out decimal size);
            if (part.Code is not null) return part;
            if (sum.Kind != QuantityKind.Length || part.Kind != QuantityKind.Length || size >= lastSize)
                return Fail(QuantityCodes.NotASum, start..at);
            sum = sum with { Value = sum.Value + part.Value };
            lastSize = size;
        }

        return sum;
    }

    private Scanned Part(out decimal unitSize)
    {
        unitSize = 0;
        int start = at;
        bool negative = Skip('-') || Skip('\u2212');
        if (!TryNumber(out decimal number)) return Fail(QuantityCodes.NotANumber, start..);
        SkipBlanks();
        int unitAt = at;
        while (at < text.Length && !IsSpace(text[at]))
        {
            if (Signs.Contains(text[at++])) break;
        }

        ReadOnlySpan<char> spelling = text[unitAt..at];
        if (spelling.IsEmpty) return Fail(QuantityCodes.UnitMissing, start..unitAt);
        if (!UnitTable.TryFind(spelling, wanted, out Unit unit))
        {
            return BelongsToNumber(spelling)
                ? Fail(QuantityCodes.NotANumber, start..at)
                : Fail(QuantityCodes.UnitUnknown, unitAt..at);
        }

        SkipBlanks();
        if (unit.Kind is QuantityKind.Power && text[at..].StartsWith(Continuous, StringComparison.OrdinalIgnoreCase))
        {
            at += Continuous.Length;
            SkipBlanks();
        }

        if (negative && unit.Kind != QuantityKind.Temperature) return Fail(QuantityCodes.Negative, start..at);
        unitSize = unit.Nine;
        return new Scanned(unit.Kind, unit.Read(negative ? -number : number), null, ..);
    }

    /// <summary>Digits, and at most one point with a digit on each side: a point at an end is too easily overlooked.</summary>
    private bool TryNumber(out decimal number)
    {
        long digits = 0;
        int start = at, point = -1;
        for (; at < text.Length; at++)
        {
            char c = text[at];
            if (char.IsAsciiDigit(c)) digits = (digits * 10) + (c - '0');
            else if (c == '.' && point < 0) point = at;
            else break;
            if (at - start - (point < 0 ? 0 : 1) >= MostDigits) break;
        }

        number = new decimal((int)digits, (int)(digits >> 32), 0, false, (byte)(point < 0 ? 0 : at - point - 1));
        bool goesOn = at < text.Length && char.IsAsciiDigit(text[at]);
        return at > start && point != start && point != at - 1 && !goesOn;
    }

    /// <summary><c>e3</c> of 1e3, <c>/2</c> of 1/2, <c>.2</c> of 1.1.2, <c>-10</c> of 5-10, or <c>000</c> of 1 000.</summary>
    private static bool BelongsToNumber(ReadOnlySpan<char> spelling) =>
        spelling.ContainsAnyInRange('0', '9')
        && (!char.IsLetter(spelling[0]) || (spelling.Length > 1 && spelling[0] is 'e' or 'E' && !char.IsLetter(spelling[1])));

    private bool Skip(char c)
    {
        if (at == text.Length || text[at] != c) return false;
        at++;
        return true;
    }

    private void SkipBlanks()
    {
        while (at < text.Length && IsSpace(text[at])) at++;
    }

    private static Scanned Fail(string code, Range at) => new(default, 0, code, at);

    /// <summary>White space as the contract's patterns mean it (ECMA-262), which has no U+0085.</summary>
    private static bool IsSpace(char letter) => letter != '\u0085' && char.IsWhiteSpace(letter);
}
