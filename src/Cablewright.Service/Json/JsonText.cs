using System.Runtime.InteropServices;
using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>Texts and names whose escapes may hold half of a surrogate pair: RFC 8259 allows that, .NET's texts do not.</summary>
internal static class JsonText
{
    public const string NotUnicode = "the text holds half of a surrogate pair, which is no character";

    /// <summary>Whether it is text; without an escape it cannot be anything else, UTF-8 having been checked before.</summary>
    public static bool IsText(JsonElement value) =>
        !JsonMarshal.GetRawUtf8Value(value).Contains((byte)'\\') || TryRead(value, out _);

    /// <summary>The text, if it is one.</summary>
    public static bool TryRead(JsonElement value, out string text)
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

    /// <summary>The member's name, or what can be shown of one that is no text.</summary>
    public static string Name(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return Excerpt.Of(JsonMarshal.GetRawUtf8PropertyName(member));
        }
    }
}
