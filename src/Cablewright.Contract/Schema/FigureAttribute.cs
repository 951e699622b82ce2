namespace Cablewright.Contract.Schema;

/// <summary>The unit, range and an example of a number, for the published contract.</summary>
/// <param name="unit">Its unit; <c>1</c> for a ratio or a count.</param>
/// <param name="example">A value that an answer could hold.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FigureAttribute(string unit, double example) : Attribute
{
    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>A value that an answer could hold.</summary>
    public double Example { get; } = example;

    /// <summary>The smallest value that it can have.</summary>
    public double Smallest { get; init; }

    /// <summary>The largest value that it can have; infinite where nothing bounds it.</summary>
    public double Largest { get; init; } = double.PositiveInfinity;
}
