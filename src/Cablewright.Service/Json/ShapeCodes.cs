using Cablewright.Vocabulary;

namespace Cablewright.Service.Json;

/// <summary>What can be wrong with a body before its content is looked at.</summary>
internal static class ShapeCodes
{
    [Meaning("More bytes than a body may have.")]
    public const string TooLarge = "body.too-large";

    [Meaning("No bytes, or only blanks.")]
    public const string Empty = "body.empty";

    [Meaning("Bytes that are not UTF-8.")]
    public const string NotUtf8 = "json.not-utf8";

    [Meaning("Not JSON (RFC 8259); the detail names line and column.")]
    public const string Malformed = "json.malformed";

    [Meaning("Arrays and objects nested too deeply.")]
    public const string TooDeep = "json.too-deep";

    [Meaning("A member that the contract does not know; the detail names the nearest known one.")]
    public const string UnknownMember = "member.unknown";

    [Meaning("A member given twice.")]
    public const string DuplicateMember = "member.duplicate";

    [Meaning("A member that must be there and is not.")]
    public const string MissingMember = "member.missing";

    [Meaning("A null where a value is due: a member that must be there, or an item of a list.")]
    public const string Null = "value.null";

    [Meaning("A value of another JSON type than the contract's.")]
    public const string WrongType = "value.wrong-type";

    [Meaning("A number with a fraction or an exponent, or beyond 32 bits, where a whole number is due.")]
    public const string NotWhole = "number.not-whole";

    [Meaning("A number beyond what a 64-bit float holds.")]
    public const string NumberTooLarge = "number.too-large";

    [Meaning("A word outside the member's list.")]
    public const string UnknownWord = "word.unknown";

    [Meaning("Text with half of a surrogate pair, which is no character.")]
    public const string NotText = "text.not-unicode";

    [Meaning("Stands for the faults beyond those that are listed.")]
    public const string More = "errors.more";
}
