using System.Text.Json;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Tests.Data;

/// <summary>Every number that the engine carries says where it comes from and how it was come by.</summary>
public class EmbeddedFigureTests
{
    private static readonly string[] Provenances = ["read", "computed", "from memory", "common practice, no source"];

    public static TheoryData<string> DataFiles() =>
        [.. typeof(Release).Assembly.GetManifestResourceNames().Where(name => name.EndsWith(".json", StringComparison.Ordinal))];

    [Fact]
    public void The_assembly_carries_its_data_and_nothing_else()
    {
        string[] names = typeof(Release).Assembly.GetManifestResourceNames();
        Assert.Contains("Conductors/materials.json", names);
        Assert.Contains("Heat/heat-balance.json", names);
        Assert.Contains("Rulesets/2026.2/ruleset.json", names);
        Assert.Contains("Rulesets/2026.2/fuse-families.json", names);
        Assert.DoesNotContain(
            names,
            name => name.Contains("packages.lock", StringComparison.Ordinal) || name.Contains("obj/", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(DataFiles))]
    public void Each_number_has_a_source_and_a_provenance(string file)
    {
        using var document = JsonDocument.Parse(typeof(Release).Assembly.GetManifestResourceStream(file)!);
        int numbers = Walk(document.RootElement, file);
        Assert.True(numbers > 0, file + " holds no number");
    }

    [Fact]
    public void Each_figure_of_each_ruleset_is_complete_and_unique()
    {
        foreach (Ruleset ruleset in RulesetLibrary.All)
        {
            Assert.Equal(ruleset.Figures.Count, ruleset.Figures.Select(figure => figure.Id).Distinct().Count());
            Assert.All(ruleset.Figures, figure =>
            {
                Assert.True(double.IsFinite(figure.Value));
                Assert.All(
                    [figure.Id, figure.Unit, figure.Meaning, figure.Source],
                    text => Assert.False(string.IsNullOrWhiteSpace(text)));
                Assert.Contains(figure.Provenance, Provenances);
            });
            Assert.NotEmpty(ruleset.SafetyNotes);
        }
    }

    /// <summary>Work budgets and what is tried in questions are the engine's, and no verdict rests on them.</summary>
    [Fact]
    public void No_ruleset_holds_what_is_the_engine_s_own() => Assert.All(
        RulesetLibrary.All.SelectMany(ruleset => ruleset.Figures),
        figure => Assert.DoesNotMatch(@"^ask\.|-budget$", figure.Id));

    private static int Walk(JsonElement element, string place) => element.ValueKind switch
    {
        JsonValueKind.Array => element.EnumerateArray().Select((item, index) => Walk(item, $"{place}/{index}")).Sum(),
        JsonValueKind.Object => WalkObject(element, place),
        _ => 0,
    };

    private static int WalkObject(JsonElement element, string place)
    {
        int own = element.EnumerateObject().Count(member => IsNumeric(member.Value));
        if (own > 0) AssertSourced(element, place);
        return own + element.EnumerateObject().Sum(member => Walk(member.Value, $"{place}/{member.Name}"));
    }

    private static bool IsNumeric(JsonElement value) =>
        value.ValueKind is JsonValueKind.Number
        || (value.ValueKind is JsonValueKind.Array && value.GetArrayLength() > 0 && value[0].ValueKind is JsonValueKind.Number);

    private static void AssertSourced(JsonElement element, string place)
    {
        Assert.True(
            element.TryGetProperty("source", out JsonElement source) && !string.IsNullOrWhiteSpace(source.GetString()),
            place + " has no source");
        Assert.True(element.TryGetProperty("provenance", out JsonElement provenance), place + " has no provenance");
        Assert.Contains(provenance.GetString(), Provenances);
    }
}
