using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Json;

/// <summary>What was sent, short enough to be shown in an error.</summary>
internal static class Excerpt
{
    private const int Longest = 60;
    private const int LongestNumber = 24;

    public static JsonNode? Of(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.True => JsonValue.Create(true),
        JsonValueKind.False => JsonValue.Create(false),
        JsonValueKind.Number when JsonMarshal.GetRawUtf8Value(value).Length <= LongestNumber => JsonValue.Create(value.Clone()),
        JsonValueKind.String when JsonText.TryRead(value, out string text) => JsonValue.Create(Of(text)),
        _ => JsonValue.Create(Of(JsonMarshal.GetRawUtf8Value(value))),
    };

    /// <summary>Never cut through a surrogate pair.</summary>
    public static string Of(string text)
    {
        if (text.Length <= Longest) return text;
        int end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return string.Concat(text.AsSpan(0, end), "…");
    }

    /// <summary>Decodes no more than can be shown: four bytes are the longest character.</summary>
    public static string Of(ReadOnlySpan<byte> utf8) =>
        Of(Encoding.UTF8.GetString(utf8[..Math.Min(utf8.Length, 4 * (Longest + 1))]));
}
