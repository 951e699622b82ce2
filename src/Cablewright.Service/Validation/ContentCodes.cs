namespace Cablewright.Service.Validation;

/// <summary>
/// What can be wrong with the content of a build that has the right shape, besides its quantities and its circuit.
/// </summary>
public static class ContentCodes
{
    /// <summary>Text that is no conductor size.</summary>
    public const string SizeUnreadable = "size.unreadable";

    /// <summary>Text that is no id.</summary>
    public const string IdMalformed = "id.malformed";

    /// <summary>The id <c>body</c>, which the vehicle's body has.</summary>
    public const string IdReserved = "id.reserved";

    /// <summary>Too few items in a list.</summary>
    public const string TooFewItems = "items.too-few";

    /// <summary>Too many items in a list.</summary>
    public const string TooManyItems = "items.too-many";

    /// <summary>More items in a list than a caller without a key may send.</summary>
    public const string TooManyWithoutKey = "items.too-many-without-key";

    /// <summary>An include in a build of a comparison.</summary>
    public const string IncludeInComparison = "comparison.include";

    /// <summary>Too long a text.</summary>
    public const string TextTooLong = "text.too-long";

    /// <summary>A number outside its range.</summary>
    public const string OutOfRange = "number.out-of-range";

    /// <summary>Text that is no currency code.</summary>
    public const string CurrencyMalformed = "currency.malformed";

    /// <summary>A ruleset that this release does not carry.</summary>
    public const string RulesetUnknown = "ruleset.unknown";

    /// <summary>A bench report without a measurement.</summary>
    public const string NothingMeasured = "audit.nothing-measured";

    /// <summary>A price without a currency.</summary>
    public const string CurrencyMissing = "currency.missing";

    /// <summary>Both a programme and a crest factor.</summary>
    public const string ProgrammeTwice = "amplifier.programme-twice";

    /// <summary>A fuse that is not there and yet has figures.</summary>
    public const string FuseNotFitted = "fuse.not-fitted";

    /// <summary>An alternator's output curve that does not go from speed to higher speed.</summary>
    public const string OutputPointsOutOfOrder = "alternator.points-out-of-order";

    /// <summary>A converter with neither a rated current nor a rated power.</summary>
    public const string ConverterRatingMissing = "converter.rating-missing";

    /// <summary>A converter with both.</summary>
    public const string ConverterRatingTwice = "converter.rating-twice";

    /// <summary>A figure that an isolator of this kind does not have.</summary>
    public const string IsolatorMemberForeign = "isolator.member-foreign";

    /// <summary>A charger without a rated current.</summary>
    public const string IsolatorRatingMissing = "isolator.rating-missing";
}
