using System.Text.Json.Serialization.Metadata;
using Cablewright.Engine.Data;
using Cablewright.Engine.Fuses;

namespace Cablewright.Engine.Rulesets;

/// <summary>The rulesets that this release carries.</summary>
public static class RulesetLibrary
{
    /// <summary>All of them, the newest first.</summary>
    public static IReadOnlyList<Ruleset> All { get; } = [Read("2026.2")];

    /// <summary>The one that is applied where a build names none.</summary>
    public static Ruleset Newest => All[0];

    /// <summary>The ruleset with this id, or <c>null</c>.</summary>
    public static Ruleset? Find(string id) => All.FirstOrDefault(ruleset => ruleset.Id == id);

    private static Ruleset Read(string id)
    {
        RulesetFile file = Embedded.Read($"Rulesets/{id}/ruleset.json", RulesetsJson.Default.RulesetFile);
        return new Ruleset(file.Id, file.Published, file.Summary, file.SafetyNotes, file.Figures)
        {
            FuseFamilies = new FuseFamilies(Table("fuse-families", FusesJson.Default.FuseFamilyRowArray)),
            Ampacity = new AmpacityTable(Table("ampacity-table", RulesetsJson.Default.AmpacityRowArray)),
            ShortCircuit = new ShortCircuitConstants(Table("short-circuit", DataJson.Default.NamedFigureArray)),
            RestVoltages = new RestVoltages(Table("rest-voltages", RulesetsJson.Default.RestVoltageRowArray)),
            IsolatorRatings = new IsolatorRatings(Table("isolator-ratings", RulesetsJson.Default.SourcedNumbers)),
        };

        T Table<T>(string name, JsonTypeInfo<T> shape) => Embedded.Read($"Rulesets/{id}/{name}.json", shape);
    }
}

internal sealed record RulesetFile(
    string Id, string Published, string Summary, IReadOnlyList<string> SafetyNotes, IReadOnlyList<Figure> Figures);
