using System.Collections.Frozen;
using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>One word of a list, in its own capitals.</summary>
internal sealed class WordShape(IReadOnlyList<string> words) : Shape("one of the words listed", JsonValueKind.String)
{
    private readonly FrozenSet<string> _words = words.ToFrozenSet(StringComparer.Ordinal);

    public override string Accepted { get; } = string.Join(", ", words);

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!Excerpt.TryText(value, out string word))
        {
            walk.Add(ShapeCodes.NotText, TextShape.NotUnicode, Excerpt.Of(value), Accepted);
            return;
        }

        if (_words.Contains(word)) return;
        string hint = Nearest.To(word, words) is { } meant ? $"; did you mean \"{meant}\"?" : "";
        walk.Add(ShapeCodes.UnknownWord, $"\"{Excerpt.Of(word)}\" is not one of the words accepted{hint}", Excerpt.Of(value), Accepted);
    }
}
