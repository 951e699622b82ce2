using Cablewright.Vocabulary;

namespace Cablewright.Service.Quantities;

/// <summary>What can be wrong with a quantity's text.</summary>
internal static class QuantityCodes
{
    [Meaning("No text, or only blanks, where a quantity is due.")]
    public const string Empty = "quantity.empty";

    [Meaning("More text than a quantity may have.")]
    public const string TooLong = "quantity.too-long";

    [Meaning("A comma, which stands for thousands in one country and for decimals in the next.")]
    public const string Comma = "quantity.comma";

    [Meaning("No plain decimal number where one is due.")]
    public const string NotANumber = "quantity.not-a-number";

    [Meaning("A minus sign on something other than a temperature.")]
    public const string Negative = "quantity.negative";

    [Meaning("A number without a unit.")]
    public const string UnitMissing = "quantity.unit-missing";

    [Meaning("A unit that is not known here, or is written in wrong capitals.")]
    public const string UnitUnknown = "quantity.unit-unknown";

    [Meaning("The unit of another kind, such as a voltage where a length is due.")]
    public const string WrongUnit = "quantity.wrong-unit";

    [Meaning("Several parts that are not lengths, or not the larger unit first.")]
    public const string NotASum = "quantity.not-a-sum";

    [Meaning("Below the smallest value accepted.")]
    public const string TooSmall = "quantity.too-small";

    [Meaning("Above the largest value accepted.")]
    public const string TooLarge = "quantity.too-large";
}
