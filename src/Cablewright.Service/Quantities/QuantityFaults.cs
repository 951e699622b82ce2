using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>The wording of what is wrong with a quantity.</summary>
internal static class QuantityFaults
{
    private const int LongestNumber = 12;

    /// <summary>The text could not be read at all.</summary>
    public static QuantityFault Unreadable(Scanned scanned, ReadOnlySpan<char> text, QuantityRule rule)
    {
        string code = scanned.Code!;
        if (code == QuantityCodes.UnitMissing) return UnitMissing(text[scanned.At].Trim(), rule);
        string part = code == QuantityCodes.TooLong ? "" : text[scanned.At].Trim().ToString();
        return new QuantityFault(code, Reason(code, part, rule), rule.Accepted);
    }

    /// <summary>A bare number, as text or from JSON: shows it with the example's unit where that is in range.</summary>
    public static QuantityFault UnitMissing(ReadOnlySpan<char> number, QuantityRule rule)
    {
        string example = rule.Ranges[0].Example;
        string right = number.Length > LongestNumber ? example : $"{number} {example.Split(' ')[1]}";
        if (rule.Read(right).Fault is not null) right = example;
        return new QuantityFault(QuantityCodes.UnitMissing, $"add a unit, for example \"{right}\"", rule.Accepted);
    }

    public static QuantityFault WrongUnit(ReadOnlySpan<char> text, QuantityKind given, QuantityRule rule) => new(
        QuantityCodes.WrongUnit, $"\"{text.Trim()}\" is {Name(given)}; expected {Wanted(rule)}", rule.Accepted);

    public static QuantityFault TooSmall(ReadOnlySpan<char> text, QuantityRange range, QuantityRule rule) => new(
        QuantityCodes.TooSmall,
        $"\"{text.Trim()}\" is less than {range.SmallestText}, the smallest accepted here",
        rule.Accepted);

    public static QuantityFault TooLarge(ReadOnlySpan<char> text, QuantityRange range, QuantityRule rule) => new(
        QuantityCodes.TooLarge,
        $"\"{text.Trim()}\" is more than {range.LargestText}, the largest accepted here",
        rule.Accepted);

    private static string Reason(string code, string part, QuantityRule rule) => code switch
    {
        QuantityCodes.Empty => $"the text is empty; expected {Wanted(rule)}",
        QuantityCodes.TooLong => $"longer than {QuantityScanner.LongestText} characters; expected {Wanted(rule)}",
        QuantityCodes.Comma => "a comma is read as thousands in one place and as decimals in another: "
            + "write thousands without a separator and decimals with a point, like \"1000 W\" or \"4.9 m\"",
        QuantityCodes.Negative => $"\"{part}\": only a temperature may be negative",
        QuantityCodes.UnitUnknown => UnknownUnit(part, rule),
        QuantityCodes.NotASum => $"\"{part}\" cannot be added: only lengths are read in parts, "
            + "the larger unit first, like \"16 ft 6 in\"",
        _ => $"\"{part}\" does not start with a plain number: write at most {QuantityScanner.MostDigits} digits, "
            + "a decimal point with a digit on each side, and no exponent, fraction or thousands separator",
    };

    private static string UnknownUnit(string unit, QuantityRule rule)
    {
        string start = $"\"{unit}\" is not a unit known here";
        if (UnitTable.Nearest(unit) is { } right) return $"{start}; did you mean \"{right}\"? Capitals matter";
        IEnumerable<string> known = rule.Ranges.Select(range => $"{Name(range.Kind)} in {UnitTable.List(range.Kind)}");
        return $"{start}; write {string.Join(", or ", known)}";
    }

    private static string Wanted(QuantityRule rule) => string.Join(" or ", rule.Ranges.Select(range => Name(range.Kind)));

    private static string Name(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "a length",
        QuantityKind.Mass => "a mass",
        QuantityKind.Voltage => "a voltage",
        QuantityKind.Current => "a current",
        QuantityKind.Power => "a power",
        QuantityKind.Resistance => "a resistance",
        QuantityKind.Temperature => "a temperature",
        QuantityKind.TemperatureDifference => "a difference of temperatures",
        QuantityKind.Ratio => "a percentage",
        QuantityKind.Capacity => "a capacity",
        QuantityKind.Level => "a level",
        QuantityKind.Duration => "a time",
        QuantityKind.RotationalSpeed => "a rotational speed",
        QuantityKind.Capacitance => "a capacitance",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind without a name."),
    };
}
