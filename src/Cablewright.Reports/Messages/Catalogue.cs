using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Messages;

/// <summary>The sentences of one language, by their keys.</summary>
/// <remarks>Each stands there once, whole, with holes for its values: another language is another file.</remarks>
internal sealed class Catalogue
{
    private readonly FrozenDictionary<string, Template> templates;

    private Catalogue(FrozenDictionary<string, Template> templates) => this.templates = templates;

    /// <summary>The sentences in English.</summary>
    public static Catalogue English { get; } = Read("en");

    /// <summary>Every sentence by its key.</summary>
    public IReadOnlyDictionary<string, Template> Templates => templates;

    private static Catalogue Read(string language)
    {
        using Stream file = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Messages/{language}.json")!;
        using var sentences = JsonDocument.Parse(file);
        return new Catalogue(sentences.RootElement.EnumerateObject().ToFrozenDictionary(
            sentence => sentence.Name, sentence => Template.Parse(sentence.Value.GetString()!), StringComparer.Ordinal));
    }

    /// <summary>A sentence, made in the caller's units and with the caller's names.</summary>
    public string Text(string key, Params values, UnitSystem units, GivenNames? names = null) =>
        templates[key].Fill(values, units, names);
}
