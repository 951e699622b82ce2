using System.Globalization;
using Cablewright.Engine.Numerics;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports;

/// <summary>Puts figures into words in the caller's units.</summary>
internal sealed class Phrase(UnitSystem units)
{
    private const double MetresPerFoot = 0.3048;
    private const double MetresPerInch = 0.0254;

    public static string Amps(double value) => Number(value) + " A";

    public static string Volts(double value) => Number(value) + " V";

    public static string Watts(double value) => Number(value) + " W";

    public static string Milliohms(double ohms) => Number(ohms * 1000) + " mohm";

    /// <summary>A time given in minutes: minutes up to two hours, then hours.</summary>
    public static string Minutes(double minutes) => Significant.Exceeds(minutes, 120)
        ? Number(minutes / 60) + " h"
        : Number(minutes) + " min";

    /// <summary>A time given in seconds: milliseconds below one, minutes from ten; endless as long as it lasts.</summary>
    public static string Seconds(double seconds) => double.IsInfinity(seconds)
        ? Catalogue.English.Text("value.endless", [], UnitSystem.Metric)
        : seconds < 1 ? Number(seconds * 1000) + " ms"
        : seconds < 600 ? Number(seconds) + " s"
        : Number(seconds / 60) + " min";

    public static string Percent(double fraction) => Number(fraction * 100) + " %";

    /// <summary>A length: feet, or inches below three feet; metres, or centimetres below one.</summary>
    public string Length(double metres) => units is UnitSystem.Us
        ? Significant.Exceeds(3 * MetresPerFoot, metres)
            ? Number(metres / MetresPerInch) + " in"
            : Number(metres / MetresPerFoot) + " ft"
        : metres < 1 ? Number(metres * 100) + " cm" : Number(metres) + " m";

    /// <summary>A temperature; in US units with the Celsius figure that is printed on cable behind it.</summary>
    public string Temperature(double celsius) => units is UnitSystem.Us
        ? $"{Number(celsius * 9 / 5 + 32)} F ({Number(celsius)} C)"
        : Number(celsius) + " C";

    /// <summary>A difference of temperatures.</summary>
    public string TemperatureDifference(double kelvin) => units is UnitSystem.Us
        ? $"{Number(kelvin * 9 / 5)} F ({Number(kelvin)} K)"
        : Number(kelvin) + " K";

    /// <summary>A figure with the unit it has in a ruleset.</summary>
    public string Value(double value, string unit) => unit switch
    {
        "1" => value <= 1 ? Percent(value) : Number(value),
        "m" => Length(value),
        "C" => Temperature(value),
        "K" => TemperatureDifference(value),
        "ohm" => Milliohms(value),
        _ => Number(value) + " " + unit.Split(' ')[0],
    };

    /// <summary>Three significant digits, more only where a whole number has them; a decimal point, no exponent.</summary>
    public static string Number(double value)
    {
        if (!double.IsFinite(value)) return "no";
        double magnitude = Math.Abs(value);
        int decimals = magnitude >= 100 || magnitude == 0 ? 0 : magnitude >= 10 ? 1 : magnitude >= 1 ? 2
            : 2 - (int)Math.Floor(Math.Log10(magnitude));
        string text = Math.Round(value, Math.Min(decimals, 15))
            .ToString("F" + Math.Min(decimals, 15), CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
