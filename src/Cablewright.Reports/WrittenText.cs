using System.Globalization;
using Cablewright.Engine.Text;

namespace Cablewright.Reports;

/// <summary>Figures as a build writes them.</summary>
internal static class WrittenText
{
    /// <summary>A figure with its unit.</summary>
    public static string Of(WrittenFigure figure) =>
        figure.Number.ToString("0.######", CultureInfo.InvariantCulture) + " " + Of(figure.Unit);

    private static string Of(WrittenUnit unit) => unit switch
    {
        WrittenUnit.Metre => "m",
        WrittenUnit.Centimetre => "cm",
        WrittenUnit.Foot => "ft",
        WrittenUnit.Inch => "in",
        WrittenUnit.Ampere => "A",
        WrittenUnit.AmpereHour => "Ah",
        WrittenUnit.Celsius => "C",
        WrittenUnit.Minute => "min",
        WrittenUnit.Volt => "V",
        _ => "W",
    };
}
