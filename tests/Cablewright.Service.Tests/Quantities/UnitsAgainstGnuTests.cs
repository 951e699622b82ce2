using System.Globalization;
using Cablewright.Contract.Quantities;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Tests.Quantities;

/// <summary>
/// Every spelling of every unit against GNU units 2.22, which takes its definitions from NIST SP 811 and the SI brochure.
/// </summary>
public sealed class UnitsAgainstGnuTests
{
    /// <summary>
    /// How GNU units writes our spellings; the name of a member of <see cref="Wide"/>; the unit it is read into.
    /// </summary>
    private static readonly Dictionary<QuantityKind, (string Into, Func<string, string> From)> Gnu = new()
    {
        [QuantityKind.Length] = ("m", unit => "7.3 " + unit switch
        {
            "'" or "\u2019" or "\u2032" => "feet", // its ' is a minute of arc
            "\"" or "\u201d" or "\u2033" => "inches",
            _ => unit.ToLowerInvariant(),
        }),
        [QuantityKind.Mass] = ("kg", unit => "7.3 " + unit),
        [QuantityKind.Voltage] = ("V", unit => "7.3 " + Word(unit)),
        [QuantityKind.Current] = ("A", unit => "7.3 " + Word(unit)),
        [QuantityKind.Power] = ("W", unit => "7.3 " + Word(unit)),
        [QuantityKind.Resistance] = ("ohm", unit => "7.3 " + unit.Replace('\u03bc', 'u').Replace('\u00b5', 'u')
            .Replace("\u03a9", "ohm", StringComparison.Ordinal).Replace("\u2126", "ohm", StringComparison.Ordinal)
            .ToLowerInvariant()),
        [QuantityKind.Temperature] = ("tempC", unit => unit[^1] switch
        {
            'F' or '\u2109' => "tempF(7.3)",
            'K' => "7.3 K",
            _ => "tempC(7.3)",
        }),
        [QuantityKind.TemperatureDifference] = ("K", unit => unit[^1] switch
        {
            'F' or '\u2109' => "7.3 degF",
            'K' => "7.3 K",
            _ => "7.3 degC",
        }),
        [QuantityKind.Ratio] = ("1", unit => "7.3 " + unit),
        [QuantityKind.Capacity] = ("A hour", unit => $"7.3 {unit[..^1]} hour"),
        [QuantityKind.Level] = ("1", _ => "7.3"), // already decibels: read as they are
        [QuantityKind.Duration] = ("s", unit => $"7.3 {(unit == "h" ? "hour" : unit)}"), // its h is Planck's constant
        [QuantityKind.RotationalSpeed] = ("revolution / minute", _ => "7.3 rpm"), // its 1/min is a radian, the trade's a turn
        [QuantityKind.Capacitance] =
            ("farad", unit => $"7.3 {unit[..^1].Replace('\u03bc', 'u').Replace('\u00b5', 'u')}farad"),
    };

    /// <summary>Its words have no capitals; abbreviations keep theirs.</summary>
    private static string Word(string unit) => unit.Length > 2 ? unit.ToLowerInvariant() : unit;

    public static TheoryData<string, QuantityKind> Spellings
    {
        get
        {
            var spellings = new TheoryData<string, QuantityKind>();
            foreach ((string spelling, Unit unit) in UnitTable.All) spellings.Add(spelling, unit.Kind);
            return spellings;
        }
    }

    [Theory]
    [MemberData(nameof(Spellings))]
    public void A_unit_means_what_GNU_units_says(string spelling, QuantityKind kind)
    {
        (string into, Func<string, string> from) = Gnu[kind];

        QuantityReading reading = QuantityRule.Of<Wide>(kind.ToString()).Read("7.3 " + spelling);

        Assert.Null(reading.Fault);
        Assert.Equal(kind, reading.Kind);
        double expected = GnuUnits.Convert(from(spelling), into);
        Assert.True(
            Math.Abs(reading.Value - expected) <= 1e-14 * Math.Max(1, Math.Abs(expected)),
            string.Create(CultureInfo.InvariantCulture, $"7.3 {spelling}: read {reading.Value:R}, GNU units says {expected:R}"));
    }

    [Theory]
    [InlineData("16 ft 6 in", "16 ft + 6 in")]
    [InlineData("1 yd 2 ft 3 in", "1 yd + 2 ft + 3 in")]
    [InlineData("1 m 20 cm", "1 m + 20 cm")]
    public void Parts_of_a_length_add_up(string text, string gnu) =>
        Assert.Equal(GnuUnits.Convert(gnu, "m"), QuantityRule.Of<Wide>(nameof(Wide.Length)).Read(text).Value, 12);
}
