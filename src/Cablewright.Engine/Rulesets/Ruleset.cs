using System.Collections.Frozen;

namespace Cablewright.Engine.Rulesets;

/// <summary>A number that a verdict rests on, and where it comes from.</summary>
/// <param name="Id">Stable, dotted id.</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit; <c>1</c> for a ratio.</param>
/// <param name="Meaning">What it limits or stands for.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by: <c>read</c>, <c>computed</c>, <c>from memory</c> or
/// <c>common practice, no source</c>.</param>
public sealed record Figure(string Id, double Value, string Unit, string Meaning, string Source, string Provenance)
{
    /// <summary>Source and provenance in one line, as answers carry it.</summary>
    public string Citation => Provenance is "read" or "computed" ? Source : $"{Source} ({Provenance})";
}

/// <summary>Every limit and default that a verdict rests on, versioned; never changed once published.</summary>
public sealed class Ruleset
{
    private readonly FrozenDictionary<string, Figure> byId;

    internal Ruleset(
        string id, string published, string summary, IReadOnlyList<string> safetyNotes, IReadOnlyList<Figure> figures)
    {
        Id = id;
        Published = published;
        Summary = summary;
        SafetyNotes = safetyNotes;
        Figures = figures;
        byId = figures.ToFrozenDictionary(figure => figure.Id, StringComparer.Ordinal);
    }

    /// <summary>Its id, such as <c>2026.1</c>.</summary>
    public string Id { get; }

    /// <summary>The date of publication, ISO 8601.</summary>
    public string Published { get; }

    /// <summary>What it covers, in a sentence.</summary>
    public string Summary { get; }

    /// <summary>The cautions that every answer under it carries.</summary>
    public IReadOnlyList<string> SafetyNotes { get; }

    /// <summary>All its figures.</summary>
    public IReadOnlyList<Figure> Figures { get; }

    /// <summary>The figure with this id.</summary>
    /// <exception cref="KeyNotFoundException">The ruleset has no such figure.</exception>
    public Figure this[string id] => byId[id];
}
