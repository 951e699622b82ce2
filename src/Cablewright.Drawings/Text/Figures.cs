using System.Globalization;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Text;

/// <summary>Figures of an answer as they are shown: three significant digits, in the units of the build.</summary>
internal static class Figures
{
    private const double MetresPerInch = 0.0254;
    private const double MetresPerFoot = 0.3048;
    private const double ShortFeet = 3;

    /// <summary>A number to three significant digits.</summary>
    public static string Number(double value) => value == 0 || !double.IsFinite(value)
        ? value.ToString(CultureInfo.InvariantCulture)
        : Rounded(value).ToString("0.########", CultureInfo.InvariantCulture);

    public static string Amps(double amps) => Number(amps) + " A";

    /// <summary>A voltage with two decimals, and one of ten volts and more with one.</summary>
    public static string Volts(double volts) =>
        volts.ToString(Math.Abs(volts) < 10 ? "0.##" : "0.0", CultureInfo.InvariantCulture) + " V";

    public static string Percent(double percent) => Number(percent) + " %";

    public static string Watts(double watts) => Number(watts) + " W";

    /// <summary>A level, with two decimals: nobody hears less.</summary>
    public static string Decibels(double level) => level.ToString("0.00", CultureInfo.InvariantCulture) + " dB";

    /// <summary>An amount of money, with two decimals.</summary>
    public static string Price(double amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A time: milliseconds below a second.</summary>
    public static string Seconds(double seconds) => seconds < 1 ? Number(seconds * 1000) + " ms" : Number(seconds) + " s";

    /// <summary>A length: feet, or inches below three feet; metres, or centimetres below one.</summary>
    public static string Length(double metres, UnitSystem units) => (units, metres) switch
    {
        (UnitSystem.Metric, < 1) => Number(metres * 100) + " cm",
        (UnitSystem.Metric, _) => Number(metres) + " m",
        (_, < ShortFeet * MetresPerFoot * (1 - 1e-9)) => Number(metres / MetresPerInch) + " in",
        _ => Number(metres / MetresPerFoot) + " ft",
    };

    /// <summary>A temperature.</summary>
    public static string Temperature(double celsius, UnitSystem units) => units is UnitSystem.Metric
        ? Whole(celsius) + " °C"
        : Whole(celsius * 9 / 5 + 32) + " °F";

    /// <summary>A conductor, such as <c>2 x 1/0 AWG copper</c>.</summary>
    public static string Conductor(ConductorResult conductor) =>
        (conductor.Count > 1 ? conductor.Count.ToString(CultureInfo.InvariantCulture) + " x " : "")
        + Names.Clean(conductor.Size) + " " + conductor.Material.InText();

    /// <summary>A fuse, such as <c>200 A ANL</c>.</summary>
    public static string Fuse(FuseResult fuse) =>
        Amps(fuse.RatingAmps) + " " + fuse.Family.Word() + (fuse.PerConductor ? " for each conductor" : "");

    /// <summary>Where a run lies.</summary>
    public static string Place(Route route) => route.Word().Replace('-', ' ');

    private static string Whole(double value) => Math.Round(Significant.Round(value)).ToString("0", CultureInfo.InvariantCulture);

    private static double Rounded(double value)
    {
        int digits = 2 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        double shown = Significant.Round(value);
        if (digits >= 0) return Math.Round(shown, Math.Min(digits, 12), MidpointRounding.AwayFromZero);
        double step = Math.Pow(10, -digits);
        return Math.Round(shown / step, MidpointRounding.AwayFromZero) * step;
    }
}
