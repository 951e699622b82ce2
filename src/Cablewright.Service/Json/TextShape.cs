using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>Text of a permitted length.</summary>
internal sealed class TextShape(Size size) : Shape("text", JsonValueKind.String)
{
    public override string? Accepted => size.Accepted("characters");

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!Excerpt.TryText(value, out string text)) walk.Add(ShapeCodes.NotText, NotUnicode, Excerpt.Of(value));
        else if (text.Length < size.Least) walk.Add(ShapeCodes.TextTooShort, $"{text.Length} characters; at least {size.Least} expected", text, Accepted);
        else if (text.Length > size.Most)
            walk.Add(ShapeCodes.TextTooLong, $"{text.Length} characters; at most {size.Most} accepted", Excerpt.Of(value), Accepted);
    }

    public const string NotUnicode = "the text holds half of a surrogate pair, which is no character";
}
