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
        JsonValueKind.String when TryText(value, out string text) => JsonValue.Create(Of(text)),
        _ => JsonValue.Create(Of(JsonMarshal.GetRawUtf8Value(value))),
    };

    public static string Of(string text)
    {
        if (text.Length <= Longest) return text;
        int end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return string.Concat(text.AsSpan(0, end), "…");
    }

    /// <summary>The text, unless it holds half of a surrogate pair.</summary>
    public static bool TryText(JsonElement value, out string text)
    {
        try
        {
            text = value.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            text = "";
            return false;
        }
    }

    /// <summary>The member's name; as it was sent, escapes and all, if it holds half of a surrogate pair.</summary>
    public static string Name(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return Of(JsonMarshal.GetRawUtf8PropertyName(member));
        }
    }

    /// <summary>Decodes no more than can be shown: four bytes are the longest character.</summary>
    private static string Of(ReadOnlySpan<byte> utf8) => Of(Encoding.UTF8.GetString(utf8[..Math.Min(utf8.Length, 4 * (Longest + 1))]));
}
