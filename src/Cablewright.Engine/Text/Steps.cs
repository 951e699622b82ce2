using System.Globalization;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Text;

/// <summary>A figure and how it is written in a build; the text is exactly the figure.</summary>
/// <param name="Value">In SI units.</param>
/// <param name="Text">With its unit.</param>
internal readonly record struct WrittenFigure(double Value, string Text);

/// <summary>Figures that someone would write down: whole steps of what a tape measure or a data sheet shows.</summary>
internal static class Steps
{
    /// <summary>The least share of a length, a power or a current that is tried.</summary>
    public const int LeastPercent = 10;

    /// <summary>No run is made shorter than a build can state it.</summary>
    private const decimal ShortestMetres = 0.01m;

    private const decimal MetresPerFoot = 0.3048m;
    private const decimal MetresPerInch = 0.0254m;
    private const decimal ShortFeet = 3;
    private const double Visible = 1e-6;

    /// <summary>The lengths below a length in whole steps, the longest first.</summary>
    /// <remarks>A quarter of a foot from 3 ft, an inch below; 5 cm from 1 m, 1 cm below.</remarks>
    public static IReadOnlyList<WrittenFigure> LengthsBelow(double metres, UnitSystem units)
    {
        decimal least = Math.Max((decimal)metres * LeastPercent / 100, ShortestMetres), from = (decimal)metres;
        return units is UnitSystem.Us
            ? [.. Below(from, 0.25m, Math.Max(least, ShortFeet * MetresPerFoot), MetresPerFoot, "ft"),
                .. Below(Math.Min(from, ShortFeet * MetresPerFoot), 1, least, MetresPerInch, "in")]
            : [.. Below(from, 0.05m, Math.Max(least, 1), 1, "m"), .. Below(Math.Min(from, 1), 1, least, 0.01m, "cm")];
    }

    /// <summary>The longest of them that is within a limit.</summary>
    public static WrittenFigure LengthWithin(double metres, UnitSystem units) => LengthsBelow(metres * (1 + Visible), units)[0];

    /// <summary>
    /// A share of a length, rounded down to hundredths of a foot or a metre; <c>null</c> where nothing is left to lay.
    /// </summary>
    public static WrittenFigure? LengthPart(double metres, int percent, UnitSystem units)
    {
        decimal size = units is UnitSystem.Us ? MetresPerFoot : 1;
        decimal part = decimal.Floor((decimal)metres * percent / size) / 100;
        return part * size < ShortestMetres ? null : Of(part, size, units is UnitSystem.Us ? "ft" : "m");
    }

    /// <summary>A length as it is written.</summary>
    public static string Length(double metres, UnitSystem units) => units is UnitSystem.Metric ? Text((decimal)metres, "m")
        : (decimal)metres < ShortFeet * MetresPerFoot ? Text(decimal.Round((decimal)metres / MetresPerInch, 4), "in")
        : Text(decimal.Round((decimal)metres / MetresPerFoot, 4), "ft");

    /// <summary>The figures below a figure in hundredths of its power of ten, the largest first.</summary>
    public static IReadOnlyList<WrittenFigure> Below(double value, string unit) =>
        [.. Below((decimal)value, StepOf(value), (decimal)value * LeastPercent / 100, 1, unit)];

    /// <summary>A share of a figure, rounded down likewise.</summary>
    public static WrittenFigure Part(double value, int percent, string unit)
    {
        decimal step = StepOf(value);
        return Of(decimal.Floor((decimal)value * percent / 100 / step) * step, 1, unit);
    }

    /// <summary>A figure rounded up likewise.</summary>
    public static WrittenFigure Up(double value, string unit)
    {
        decimal step = StepOf(value);
        return Of(decimal.Ceiling((decimal)value / step) * step, 1, unit);
    }

    /// <summary>A figure as it is written.</summary>
    public static string Text(double value, string unit) => Text((decimal)Significant.Round(value), unit);

    private static IEnumerable<WrittenFigure> Below(decimal from, decimal step, decimal least, decimal size, string unit)
    {
        decimal first = decimal.Ceiling(from / size / step) - 1;
        for (decimal place = first; place > 0 && place * step * size >= least; place--) yield return Of(place * step, size, unit);
    }

    private static WrittenFigure Of(decimal number, decimal size, string unit) =>
        new((double)(number * size), Text(number, unit));

    private static string Text(decimal number, string unit) =>
        number.ToString("0.######", CultureInfo.InvariantCulture) + " " + unit;

    private static decimal StepOf(double value)
    {
        int exponent = (int)Math.Floor(Math.Log10(value)) - 2;
        decimal step = 1;
        for (; exponent > 0; exponent--) step *= 10;
        for (; exponent < 0; exponent++) step /= 10;
        return step;
    }
}
