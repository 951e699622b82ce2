using Cablewright.Vocabulary;

namespace Cablewright.Engine.Text;

/// <summary>Figures that someone would write down: whole steps of what a tape measure or a data sheet shows.</summary>
internal static class WrittenSteps
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
            ? [.. Below(from, 0.25m, Math.Max(least, ShortFeet * MetresPerFoot), MetresPerFoot, WrittenUnit.Foot),
                .. Below(Math.Min(from, ShortFeet * MetresPerFoot), 1, least, MetresPerInch, WrittenUnit.Inch)]
            : [.. Below(from, 0.05m, Math.Max(least, 1), 1, WrittenUnit.Metre),
                .. Below(Math.Min(from, 1), 1, least, 0.01m, WrittenUnit.Centimetre)];
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
        WrittenUnit unit = units is UnitSystem.Us ? WrittenUnit.Foot : WrittenUnit.Metre;
        return part * size < ShortestMetres ? null : Of(part, size, unit);
    }

    /// <summary>A length as it is written.</summary>
    public static WrittenFigure Length(double metres, UnitSystem units) => units is UnitSystem.Metric
        ? new(metres, (decimal)metres, WrittenUnit.Metre)
        : (decimal)metres < ShortFeet * MetresPerFoot
            ? new(metres, decimal.Round((decimal)metres / MetresPerInch, 4), WrittenUnit.Inch)
            : new(metres, decimal.Round((decimal)metres / MetresPerFoot, 4), WrittenUnit.Foot);

    /// <summary>A length as a tape measure shows it: below a metre in centimetres.</summary>
    public static WrittenFigure Taped(double metres, UnitSystem units) => units is UnitSystem.Metric && metres < 1
        ? new(metres, decimal.Round((decimal)metres * 100, 4), WrittenUnit.Centimetre)
        : Length(metres, units);

    /// <summary>The figures below a figure in hundredths of its power of ten, the largest first.</summary>
    public static IReadOnlyList<WrittenFigure> Below(double value, WrittenUnit unit) =>
        [.. Below((decimal)value, StepOf(value), (decimal)value * LeastPercent / 100, 1, unit)];

    /// <summary>A share of a figure, rounded down likewise.</summary>
    public static WrittenFigure Part(double value, int percent, WrittenUnit unit)
    {
        decimal step = StepOf(value);
        return Of(decimal.Floor((decimal)value * percent / 100 / step) * step, 1, unit);
    }

    /// <summary>A figure rounded up likewise.</summary>
    public static WrittenFigure Up(double value, WrittenUnit unit)
    {
        decimal step = StepOf(value);
        return Of(decimal.Ceiling((decimal)value / step) * step, 1, unit);
    }

    private static IEnumerable<WrittenFigure> Below(decimal from, decimal step, decimal least, decimal size, WrittenUnit unit)
    {
        decimal first = decimal.Ceiling(from / size / step) - 1;
        for (decimal place = first; place > 0 && place * step * size >= least; place--) yield return Of(place * step, size, unit);
    }

    private static WrittenFigure Of(decimal number, decimal size, WrittenUnit unit) =>
        new((double)(number * size), number, unit);

    private static decimal StepOf(double value)
    {
        int exponent = (int)Math.Floor(Math.Log10(value)) - 2;
        decimal step = 1;
        for (; exponent > 0; exponent--) step *= 10;
        for (; exponent < 0; exponent++) step /= 10;
        return step;
    }
}
