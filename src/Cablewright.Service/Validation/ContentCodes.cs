using Cablewright.Vocabulary;

namespace Cablewright.Service.Validation;

/// <summary>
/// What can be wrong with the content of a build that has the right shape, besides its quantities and its circuit.
/// </summary>
internal static class ContentCodes
{
    [Meaning("Text that is no conductor size known here.")]
    public const string SizeUnreadable = "size.unreadable";

    [Meaning("Text that is no id.")]
    public const string IdMalformed = "id.malformed";

    [Meaning("The id body, which the vehicle's body has.")]
    public const string IdReserved = "id.reserved";

    [Meaning("Too few items in a list.")]
    public const string TooFewItems = "items.too-few";

    [Meaning("Too many items in a list.")]
    public const string TooManyItems = "items.too-many";

    [Meaning("More items in a list than a caller without a shop's key may send.")]
    public const string TooManyWithoutKey = "items.too-many-without-key";

    [Meaning("An include in a build of a comparison, which has no place to answer it.")]
    public const string IncludeInComparison = "comparison.include";

    [Meaning("Too long a text.")]
    public const string TextTooLong = "text.too-long";

    [Meaning("A number outside its range.")]
    public const string OutOfRange = "number.out-of-range";

    [Meaning("Text that is no currency code.")]
    public const string CurrencyMalformed = "currency.malformed";

    [Meaning("A ruleset that this release does not carry.")]
    public const string RulesetUnknown = "ruleset.unknown";

    [Meaning("A bench report with neither strands nor resistance nor mass.")]
    public const string NothingMeasured = "audit.nothing-measured";

    [Meaning("A price without a currency.")]
    public const string CurrencyMissing = "currency.missing";

    [Meaning("Both a programme and a crest factor.")]
    public const string ProgrammeTwice = "amplifier.programme-twice";

    [Meaning("A fuse that is not fitted and yet has figures.")]
    public const string FuseNotFitted = "fuse.not-fitted";

    [Meaning("Points of a fuse's own curve that are not in the order of their current.")]
    public const string OpeningTimesOutOfOrder = "fuse.opening-times-out-of-order";

    [Meaning("A fuse's own curve that does not say by when it has opened.")]
    public const string OpeningTimesWithoutEnd = "fuse.opening-times-without-end";

    [Meaning("An alternator's output curve that does not go from speed to higher speed.")]
    public const string OutputPointsOutOfOrder = "alternator.points-out-of-order";

    [Meaning("A converter with neither a rated current nor a rated power.")]
    public const string ConverterRatingMissing = "converter.rating-missing";

    [Meaning("A converter with both a rated current and a rated power.")]
    public const string ConverterRatingTwice = "converter.rating-twice";

    [Meaning("A figure that an isolator of this kind does not have.")]
    public const string IsolatorMemberForeign = "isolator.member-foreign";

    [Meaning("A charger between batteries without a rated current.")]
    public const string IsolatorRatingMissing = "isolator.rating-missing";
}
