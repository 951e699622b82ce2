using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>One unit and its way to the unit that its kind is read into.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Zero">The other's zero on this unit's scale: 32 for degrees Fahrenheit, 0 for a unit without an offset.</param>
/// <param name="Nine">How much nine of this unit are: nine, so that a degree Fahrenheit, 5/9 °C, is exact too.</param>
internal readonly record struct Unit(QuantityKind Kind, decimal Zero, decimal Nine)
{
    public decimal Read(decimal value) => (value - Zero) * Nine / 9;
}
