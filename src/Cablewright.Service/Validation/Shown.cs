using System.Text.Json.Nodes;

namespace Cablewright.Service.Validation;

/// <summary>What a problem shows of what was sent: enough to recognise it, never all of a long text.</summary>
internal static class Shown
{
    private const int Longest = 80;

    /// <summary>A text as a JSON value.</summary>
    public static JsonNode Text(string text) => JsonValue.Create(Shorten(text));

    /// <summary>A text, cut where it is long, never through a surrogate pair.</summary>
    public static string Shorten(string text)
    {
        if (text.Length <= Longest) return text;
        int end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return text[..end] + "…";
    }
}
