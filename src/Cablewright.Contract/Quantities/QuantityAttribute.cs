namespace Cablewright.Contract.Quantities;

/// <summary>
/// Marks text that holds a quantity with its unit, and states its range, ends included. A member that may be written in either
/// of two kinds carries the attribute twice. Whatever needs the range (reader, validator, contract) reads it here.
/// </summary>
/// <param name="kind">What it measures.</param>
/// <param name="smallest">The smallest value accepted, as a caller would write it: <c>0.1 m</c>.</param>
/// <param name="largest">The largest value accepted, written likewise.</param>
/// <param name="example">A right value, written likewise; errors show it.</param>
[AttributeUsage(AttributeTargets.Property, AllowMultiple = true)]
public sealed class QuantityAttribute(QuantityKind kind, string smallest, string largest, string example) : Attribute
{
    /// <summary>What it measures.</summary>
    public QuantityKind Kind => kind;

    /// <summary>The smallest value accepted.</summary>
    public string Smallest => smallest;

    /// <summary>The largest value accepted.</summary>
    public string Largest => largest;

    /// <summary>A right value.</summary>
    public string Example => example;
}
