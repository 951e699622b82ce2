using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>A number that a double holds.</summary>
internal sealed class NumberShape() : Shape("a number", JsonValueKind.Number)
{
    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!value.TryGetDouble(out double number) || !double.IsFinite(number))
            walk.Add(ShapeCodes.NumberTooLarge, "the number is too large", Excerpt.Of(value));
    }
}

/// <summary>A whole number of 32 bits, written without point and exponent.</summary>
internal sealed class WholeNumberShape() : Shape("a whole number", JsonValueKind.Number)
{
    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!value.TryGetInt32(out _))
            walk.Add(ShapeCodes.NotWhole, "expected a whole number, written with digits only", Excerpt.Of(value));
    }
}

/// <summary>True or false.</summary>
internal sealed class FlagShape() : Shape("true or false", JsonValueKind.True)
{
    protected override void CheckContent(JsonElement value, Walk walk)
    {
    }
}
