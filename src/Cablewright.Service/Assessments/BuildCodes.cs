using Cablewright.Vocabulary;

namespace Cablewright.Service.Assessments;

/// <summary>What can be wrong with the content of a build, besides its circuit and what attributes state.</summary>
internal static class BuildCodes
{
    [Meaning("More items in a list than a caller without a shop's key may send.")]
    public const string TooManyWithoutKey = "items.too-many-without-key";

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
