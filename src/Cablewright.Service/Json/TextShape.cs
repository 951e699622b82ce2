using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>Any text. How long it may be and what it may say is content, for the validators.</summary>
internal sealed class TextShape() : Shape("text", JsonValueKind.String)
{
    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!JsonText.IsText(value)) walk.Add(ShapeCodes.NotText, JsonText.NotUnicode, Excerpt.Of(value));
    }
}
