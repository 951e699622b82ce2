using Cablewright.Service.Assessments;
using Cablewright.Service.Json;
using Cablewright.Service.Kits;
using Cablewright.Service.Quantities;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Problems;

/// <summary>One kind of fault in a request.</summary>
/// <param name="Code">Its stable code.</param>
/// <param name="Meaning">What it says.</param>
internal sealed record FaultKind(string Code, string Meaning);

/// <summary>Every code that a problem's <c>errors</c> can carry.</summary>
internal static class FaultKinds
{
    private static readonly FaultKind[] OfBodies =
    [
        new(ShapeCodes.TooLarge, "More bytes than a body may have."),
        new(ShapeCodes.Empty, "No bytes, or only blanks."),
        new(ShapeCodes.NotUtf8, "Bytes that are not UTF-8."),
        new(ShapeCodes.Malformed, "Not JSON (RFC 8259); the detail names line and column."),
        new(ShapeCodes.TooDeep, "Arrays and objects nested too deeply."),
        new(ShapeCodes.UnknownMember, "A member that the contract does not know; the detail names the nearest known one."),
        new(ShapeCodes.DuplicateMember, "A member given twice."),
        new(ShapeCodes.MissingMember, "A member that must be there and is not."),
        new(ShapeCodes.Null, "A null; what is open is left out."),
        new(ShapeCodes.WrongType, "A value of another JSON type than the contract's."),
        new(ShapeCodes.NotWhole, "A number with a fraction or an exponent, or beyond 32 bits, where a whole number is due."),
        new(ShapeCodes.NumberTooLarge, "A number beyond what a 64-bit float holds."),
        new(ShapeCodes.UnknownWord, "A word outside the member's list."),
        new(ShapeCodes.NotText, "Text with half of a surrogate pair, which is no character."),
        new(ShapeCodes.More, "Stands for the faults beyond those that are listed."),
    ];

    private static readonly FaultKind[] OfQueries =
    [
        new(QueryCodes.Unknown, "A query parameter that the call does not know; the detail names the nearest known one."),
        new(QueryCodes.Repeated, "A query parameter given more than once."),
        new(QueryCodes.Missing, "A query parameter that must be there and is not."),
        new(QueryCodes.Unreadable, "A query parameter that is no number in its range, or no cursor."),
    ];

    private static readonly FaultKind[] OfKits =
    [
        new(KitCodes.SkuDiffers, "A kit's number that is not the one in the address."),
        new(KitCodes.Missing, "A kit check with neither a kit nor a shop and its number for one."),
        new(KitCodes.Twice, "A kit check with both a kit and a shop's number for one."),
        new(KitCodes.SkuUnknown, "A number that none of the shop's kits has."),
        new(KitCodes.CursorUnknown, "A cursor that names none of the shop's kits."),
        new(KitCodes.PartMemberMissing, "A part without what it is known by: a cable's size and length, a fuse's rating."),
        new(KitCodes.PartMemberForeign, "A figure that a part of this kind does not have."),
    ];

    private static readonly FaultKind[] OfQuantities =
    [
        new(QuantityCodes.Empty, "No text, or only blanks, where a quantity is due."),
        new(QuantityCodes.TooLong, "More text than a quantity may have."),
        new(QuantityCodes.Comma, "A comma, which stands for thousands in one country and for decimals in the next."),
        new(QuantityCodes.NotANumber, "No plain decimal number where one is due."),
        new(QuantityCodes.Negative, "A minus sign on something other than a temperature."),
        new(QuantityCodes.UnitMissing, "A number without a unit."),
        new(QuantityCodes.UnitUnknown, "A unit that is not known here, or is written in wrong capitals."),
        new(QuantityCodes.WrongUnit, "The unit of another kind, such as a voltage where a length is due."),
        new(QuantityCodes.NotASum, "Several parts that are not lengths, or not the larger unit first."),
        new(QuantityCodes.TooSmall, "Below the smallest value accepted."),
        new(QuantityCodes.TooLarge, "Above the largest value accepted."),
    ];

    private static readonly FaultKind[] OfContent =
    [
        new(ContentCodes.SizeUnreadable, "Text that is no conductor size known here."),
        new(ContentCodes.IdMalformed, "Text that is no id."),
        new(ContentCodes.IdReserved, "The id body, which the vehicle's body has."),
        new(ContentCodes.TooFewItems, "Too few items in a list."),
        new(ContentCodes.TooManyItems, "Too many items in a list."),
        new(ContentCodes.TooManyWithoutKey, "More items in a list than a caller without a shop's key may send."),
        new(ContentCodes.IncludeInComparison, "An include in a build of a comparison, which has no place to answer it."),
        new(ContentCodes.TextTooLong, "Too long a text."),
        new(ContentCodes.OutOfRange, "A number outside its range."),
        new(ContentCodes.CurrencyMalformed, "Text that is no currency code."),
        new(ContentCodes.RulesetUnknown, "A ruleset that this release does not carry."),
        new(ContentCodes.NothingMeasured, "A bench report with neither strands nor resistance nor mass."),
        new(ContentCodes.CurrencyMissing, "A price without a currency."),
        new(ContentCodes.ProgrammeTwice, "Both a programme and a crest factor."),
        new(ContentCodes.FuseNotFitted, "A fuse that is not fitted and yet has figures."),
        new(ContentCodes.OutputPointsOutOfOrder, "An alternator's output curve that does not go from speed to higher speed."),
        new(ContentCodes.ConverterRatingMissing, "A converter with neither a rated current nor a rated power."),
        new(ContentCodes.ConverterRatingTwice, "A converter with both a rated current and a rated power."),
        new(ContentCodes.IsolatorMemberForeign, "A figure that an isolator of this kind does not have."),
        new(ContentCodes.IsolatorRatingMissing, "A charger between batteries without a rated current."),
    ];

    /// <summary>The engine's own codes.</summary>
    private static readonly FaultKind[] OfCircuits =
    [
        new("id.taken", "An id that something else has."),
        new("run.ends-equal", "A run that starts and ends at the same place."),
        new("run.not-connected", "A run that no battery reaches."),
        new("run.side-contradicts", "A run marked supply that meets a return run."),
        new("run.side-unclear", "A run whose places do not tell whether it is supply or return."),
        new("place.joins-nothing", "A junction that only one run names; the detail names the nearest known place."),
        new("amplifiers.none", "A build without an amplifier."),
        new("amplifier.draw-unknown", "An amplifier of which nothing says what it draws."),
        new("amplifier.no-supply", "An amplifier that no supply run reaches."),
        new("amplifier.no-return", "An amplifier whose return runs lead nowhere."),
        new("vehicle.two-chargers", "A vehicle with an alternator and a converter in its place."),
        new("alternator.place-unknown", "An alternator or a converter at a place from which no run leads to a battery."),
        new("alternator.rating-unknown", "An alternator at a place of its own of which nothing says what its cable must carry."),
        new("capacitor.place-unknown", "A capacitor at a place to which no supply run leads."),
        new("isolator.in-return", "An isolator on a return run."),
        new("isolator.bypassed", "An isolator past which another way leads."),
        new("isolator.ring", "Chargers that feed each other in a ring."),
        new("isolator.no-battery", "An isolator with no battery on one of its sides."),
        new("isolator.points-back", "A diode or a charger that points towards the battery that the alternator charges."),
        new("battery.not-connected", "A battery that no run touches."),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FaultKind> All { get; } =
        [.. OfBodies, .. OfQueries, .. OfQuantities, .. OfContent, .. OfKits, .. OfCircuits];
}
