namespace Cablewright.Service.Quantities;

/// <summary>What can be wrong with a quantity's text.</summary>
public static class QuantityCodes
{
    /// <summary>No text, or only blanks.</summary>
    public const string Empty = "quantity.empty";

    /// <summary>More than <see cref="QuantityScanner.LongestText"/> characters.</summary>
    public const string TooLong = "quantity.too-long";

    /// <summary>A comma, which stands for thousands in one country and for decimals in the next.</summary>
    public const string Comma = "quantity.comma";

    /// <summary>No plain decimal number where one is due: a sign, an exponent, a fraction, a word.</summary>
    public const string NotANumber = "quantity.not-a-number";

    /// <summary>A minus sign on something other than a temperature.</summary>
    public const string Negative = "quantity.negative";

    /// <summary>A number without a unit.</summary>
    public const string UnitMissing = "quantity.unit-missing";

    /// <summary>A unit that is not known here, or is written in wrong capitals.</summary>
    public const string UnitUnknown = "quantity.unit-unknown";

    /// <summary>The unit of another kind: a voltage where a length is due.</summary>
    public const string WrongUnit = "quantity.wrong-unit";

    /// <summary>Several parts that are not lengths, or not the larger unit first.</summary>
    public const string NotASum = "quantity.not-a-sum";

    /// <summary>Below the smallest value accepted.</summary>
    public const string TooSmall = "quantity.too-small";

    /// <summary>Above the largest value accepted.</summary>
    public const string TooLarge = "quantity.too-large";
}
