using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>Where a text stops being JSON and what was due there. The parser's own messages do not speak to a caller.</summary>
/// <param name="IsDepth">The nesting is the trouble, not the grammar.</param>
/// <param name="At">The offending byte.</param>
/// <param name="Expected">What was due.</param>
internal readonly record struct JsonErrorLocator(bool IsDepth, int At, string Expected)
{
    private const string Value = "a value: an object, an array, text in double quotes, a number, true or false";
    private const string Name = "a member name in double quotes";

    /// <summary>Reads again, to the last good token, and judges by what stands between it and the parser's complaint.</summary>
    public static JsonErrorLocator Find(ReadOnlySpan<byte> text, int complaint, int mostDepth)
    {
        Utf8JsonReader reader = new(text, new JsonReaderOptions { MaxDepth = mostDepth + 1 });
        Stack<JsonTokenType> open = new();
        JsonTokenType last = JsonTokenType.None;
        int end = 0;
        try
        {
            while (reader.Read())
            {
                last = reader.TokenType;
                end = (int)reader.BytesConsumed;
                if (last is JsonTokenType.StartObject or JsonTokenType.StartArray) open.Push(last);
                if (last is JsonTokenType.EndObject or JsonTokenType.EndArray) open.Pop();
                if (open.Count > mostDepth) return new JsonErrorLocator(true, (int)reader.TokenStartIndex, "");
            }
        }
        catch (JsonException)
        {
            // The complaint itself, already known.
        }

        JsonTokenType inside = open.Count > 0 ? open.Peek() : JsonTokenType.None;
        return After(text, Blanks(text, end), complaint, last, inside);
    }

    private static JsonErrorLocator After(
        ReadOnlySpan<byte> text, int at, int complaint, JsonTokenType last, JsonTokenType inside)
    {
        bool comma = !IsOpening(last) && inside != JsonTokenType.None && First(text, at) == ',';
        if (!comma && !IsOpening(last)) return new JsonErrorLocator(false, at, Due(last, inside, comma));
        if (comma) at = Blanks(text, at + 1);
        if (First(text, at) == '"') return InText(text, at);
        bool isNumber = First(text, at) == '-' || char.IsAsciiDigit(First(text, at));
        if (isNumber && (inside != JsonTokenType.StartObject || last == JsonTokenType.PropertyName))
            return InNumber(text, Math.Max(at, complaint), inside);
        return new JsonErrorLocator(false, complaint >= text.Length ? text.Length : at, Due(last, inside, comma));
    }

    /// <summary>The parser complains of a number that ends with the text, but it is the text that ends too early.</summary>
    private static JsonErrorLocator InNumber(ReadOnlySpan<byte> text, int at, JsonTokenType inside)
    {
        bool isComplete = at >= text.Length && char.IsAsciiDigit((char)text[^1]);
        return new(false, at, isComplete ? Due(JsonTokenType.Number, inside, false) : "a plain number like 12 or 0.5");
    }

    private static bool IsOpening(JsonTokenType last) =>
        last is JsonTokenType.None or JsonTokenType.StartObject or JsonTokenType.StartArray or JsonTokenType.PropertyName;

    private static string Due(JsonTokenType last, JsonTokenType inside, bool comma) => (last, inside, comma) switch
    {
        (JsonTokenType.PropertyName or JsonTokenType.None, _, _) => Value,
        (_, JsonTokenType.None, _) => "the end of the text",
        (JsonTokenType.StartObject, _, _) => $"{Name}, or '}}'",
        (JsonTokenType.StartArray, _, _) => $"{Value}; or ']'",
        (_, JsonTokenType.StartObject, true) => Name,
        (_, JsonTokenType.StartObject, false) => "',' or '}'",
        (_, _, true) => Value,
        _ => "',' or ']'",
    };

    /// <summary>Text that starts here was refused: a control character, an escape, no end, or a name without its colon.</summary>
    private static JsonErrorLocator InText(ReadOnlySpan<byte> text, int start)
    {
        int at = start + 1;
        while (at < text.Length && text[at] is not (byte)'"' and >= (byte)' ')
        {
            if (text[at++] != '\\') continue;
            int length = First(text, at) == 'u' ? 5 : 1;
            if (at + length > text.Length) at = text.Length;
            else if (IsEscape(text.Slice(at, length))) at += length;
            else return new JsonErrorLocator(false, at, "an escape such as \\n, \\\" or \\u00b0");
        }

        return First(text, at) switch
        {
            '"' => new JsonErrorLocator(false, Blanks(text, at + 1), "':'"),
            _ when at >= text.Length => new JsonErrorLocator(false, text.Length, "the closing double quote of a text"),
            _ => new JsonErrorLocator(false, at, "text without line breaks and tabs: write \\n and \\t"),
        };
    }

    private static bool IsEscape(ReadOnlySpan<byte> escape)
    {
        if (escape.Length == 1) return "\"\\/bfnrt"u8.Contains(escape[0]);
        foreach (byte digit in escape[1..])
        {
            if (!char.IsAsciiHexDigit((char)digit)) return false;
        }

        return true;
    }

    private static char First(ReadOnlySpan<byte> text, int at) => at < text.Length ? (char)text[at] : '\0';

    private static int Blanks(ReadOnlySpan<byte> text, int at)
    {
        while (at < text.Length && text[at] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n') at++;
        return at;
    }
}
