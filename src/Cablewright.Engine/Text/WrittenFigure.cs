using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Text;

/// <summary>A figure and how it is written in a build; what is written is exactly the figure.</summary>
/// <param name="Value">In SI units.</param>
/// <param name="Number">In the unit in which it is written.</param>
/// <param name="Unit">That unit.</param>
internal readonly record struct WrittenFigure(double Value, decimal Number, WrittenUnit Unit)
{
    /// <summary>A figure that is written in the unit in which it is worked with.</summary>
    public static WrittenFigure Of(double value, WrittenUnit unit) => new(value, (decimal)Significant.Round(value), unit);
}

/// <summary>The units in which figures are written in a build.</summary>
internal enum WrittenUnit
{
    Metre,
    Centimetre,
    Foot,
    Inch,
    Ampere,
    AmpereHour,
    Celsius,
    Minute,
    Volt,
    Watt,
}
