using System.Collections.Frozen;
using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>One word of a list, in its own capitals, or another that is read for one in any.</summary>
internal sealed class WordShape(IReadOnlyList<string> words, IEnumerable<string> alsoRead)
    : Shape("one of the words listed", JsonValueKind.String)
{
    private readonly FrozenSet<string> known = words.ToFrozenSet(StringComparer.Ordinal);
    private readonly FrozenSet<string> others = alsoRead.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    public override string Accepted { get; } = string.Join(", ", words);

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!JsonText.TryRead(value, out string word))
            walk.Add(ShapeCodes.NotText, JsonText.NotUnicode, Excerpt.Of(value), Accepted);
        else if (!known.Contains(word) && !others.Contains(word))
            walk.Add(ShapeCodes.UnknownWord, Detail(word), Excerpt.Of(value), Accepted);
    }

    private string Detail(string word) => $"\"{Excerpt.Of(word)}\" is not a word accepted here{Nearest.Hint(word, words)}";
}
