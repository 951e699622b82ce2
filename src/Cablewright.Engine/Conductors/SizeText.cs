using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Cablewright.Engine.Conductors;

/// <summary>Reads conductor sizes as the trade writes them.</summary>
internal static partial class SizeText
{
    private const int LongestText = 24;

    public static SizeReading Parse(string text, FrozenDictionary<string, ConductorSize> byLabel)
    {
        string trimmed = text.Trim();
        if (trimmed.Length is 0 or > LongestText) return Fail(SizeProblemKind.Expected, trimmed);
        if (American().Match(trimmed) is { Success: true } american) return Awg(Number(american), byLabel);
        if (MetricArea().Match(trimmed) is { Success: true } metric) return Area(metric.Groups[1].Value, byLabel);
        if (Label().Match(trimmed) is { Success: true } label) return Awg(Number(label), byLabel) with { IsLabel = true };
        return Fail(Unitless().IsMatch(trimmed) ? SizeProblemKind.NoUnit : SizeProblemKind.NoSize, trimmed);
    }

    private static SizeReading Awg(string number, FrozenDictionary<string, ConductorSize> byLabel)
    {
        string label = number switch
        {
            "0" => "1/0 AWG",
            "00" => "2/0 AWG",
            "000" => "3/0 AWG",
            "0000" => "4/0 AWG",
            _ => number + " AWG",
        };
        return byLabel.TryGetValue(label, out ConductorSize? size)
            ? new SizeReading(size, null)
            : Fail(SizeProblemKind.OutsideGauges, label);
    }

    private static SizeReading Area(string number, FrozenDictionary<string, ConductorSize> byLabel)
    {
        double area = double.Parse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (byLabel.TryGetValue(area.ToString(CultureInfo.InvariantCulture) + " mm2", out ConductorSize? size))
            return new SizeReading(size, null);
        ConductorSize[] nearest = [.. byLabel.Values
            .Where(candidate => candidate.IsMetric)
            .OrderBy(candidate => Math.Abs(Math.Log(candidate.NominalAreaMm2 / Math.Max(area, 1e-6))))
            .Take(2)
            .OrderBy(candidate => candidate.NominalAreaMm2)];
        return new SizeReading(null, new SizeProblem(SizeProblemKind.NotStandard, number, nearest));
    }

    private static string Number(Match match) => match.Groups[1].Success ? match.Groups[1].Value : match.Groups[2].Value;

    private static SizeReading Fail(SizeProblemKind kind, string text) => new(null, new SizeProblem(kind, text, []));

    [GeneratedRegex(
        @"^(?:([0-9]{1,2}|0{3,4}|[1-4]/0)\s*AWG|AWG\s*([0-9]{1,2}|0{3,4}|[1-4]/0))$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex American();

    [GeneratedRegex(
        @"^([0-9]{1,3}(?:\.[0-9]{1,3})?)\s*(?:mm2|mm²|mm\^2|sq\.? ?mm)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MetricArea();

    [GeneratedRegex(
        @"^(?:([0-9]{1,2}|0{3,4}|[1-4]/0)\s*(?:gauge|ga\.?)|([1-4]/0))$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Label();

    [GeneratedRegex(@"^[0-9./]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Unitless();
}
