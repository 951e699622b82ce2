using Cablewright.Vocabulary;

namespace Cablewright.Service.Validation;

/// <summary>What can be wrong with a member by what its attributes state, besides its quantities.</summary>
internal static class ContentCodes
{
    [Meaning("Text that is no conductor size known here.")]
    public const string SizeUnreadable = "size.unreadable";

    [Meaning("Text that is no id.")]
    public const string IdMalformed = "id.malformed";

    [Meaning("The id body or engine, which the vehicle's body and the engine block have.")]
    public const string IdReserved = "id.reserved";

    [Meaning("Too few items in a list.")]
    public const string TooFewItems = "items.too-few";

    [Meaning("Too many items in a list.")]
    public const string TooManyItems = "items.too-many";

    [Meaning("Too long a text.")]
    public const string TextTooLong = "text.too-long";

    [Meaning("A number outside its range.")]
    public const string OutOfRange = "number.out-of-range";

    [Meaning("Text that is no currency code.")]
    public const string CurrencyMalformed = "currency.malformed";
}
