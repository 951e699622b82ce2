namespace Cablewright.Service.Json;

/// <summary>What can be wrong with a body before its content is looked at.</summary>
public static class ShapeCodes
{
    /// <summary>More bytes than a body may have.</summary>
    public const string TooLarge = "body.too-large";

    /// <summary>No bytes, or only blanks.</summary>
    public const string Empty = "body.empty";

    /// <summary>Bytes that are not UTF-8.</summary>
    public const string NotUtf8 = "json.not-utf8";

    /// <summary>Not JSON (RFC 8259).</summary>
    public const string Malformed = "json.malformed";

    /// <summary>Arrays and objects nested too deeply.</summary>
    public const string TooDeep = "json.too-deep";

    /// <summary>A member that the contract does not know.</summary>
    public const string UnknownMember = "member.unknown";

    /// <summary>A member given twice.</summary>
    public const string DuplicateMember = "member.duplicate";

    /// <summary>A member that must be there and is not.</summary>
    public const string MissingMember = "member.missing";

    /// <summary>A null.</summary>
    public const string Null = "value.null";

    /// <summary>A value of another JSON type than the contract's.</summary>
    public const string WrongType = "value.wrong-type";

    /// <summary>A number with a fraction or an exponent, or beyond 32 bits, where a whole number is due.</summary>
    public const string NotWhole = "number.not-whole";

    /// <summary>A number beyond what a double holds.</summary>
    public const string NumberTooLarge = "number.too-large";

    /// <summary>A word outside the member's list.</summary>
    public const string UnknownWord = "word.unknown";

    /// <summary>Text with half of a surrogate pair, which is no character.</summary>
    public const string NotText = "text.not-unicode";

    /// <summary>Stands for the faults beyond the <see cref="ShapeReader.MostFaults"/> that are listed.</summary>
    public const string More = "errors.more";
}
