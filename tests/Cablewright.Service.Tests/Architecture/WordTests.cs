using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Support;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>Every word stands once: no enumeration has a twin, and none is turned into another.</summary>
public class WordTests
{
    private static readonly Assembly Vocabulary = typeof(TradeWords).Assembly;

    public static TheoryData<string> Enumerations =>
        [.. Vocabulary.GetExportedTypes().Where(type => type.IsEnum).Select(type => type.Name)];

    [Theory]
    [MemberData(nameof(Enumerations))]
    public void Each_member_has_a_word_that_leads_back_to_it(string name)
    {
        Type words = Vocabulary.GetExportedTypes().Single(type => type.Name == name);
        string[] written = [.. Enum.GetValues(words).Cast<object>().Select(value => JsonSerializer.Serialize(value, words))];
        Assert.Distinct(written);
        Assert.Equal(Enum.GetValues(words).Cast<object>(), written.Select(word => JsonSerializer.Deserialize(word, words)));
        Assert.All(written, word => Assert.Matches("^\"[A-Za-z0-9-]+\"$", word));
    }

    [Fact]
    public void No_other_project_repeats_an_enumeration_of_the_vocabulary()
    {
        string[] words = [.. Vocabulary.GetTypes().Where(type => type.IsEnum).Select(type => type.Name)];
        Assembly[] others =
        [
            typeof(Contract.ContractJson).Assembly, typeof(Engine.Release).Assembly,
            typeof(Reports.Assessments.Assessor).Assembly, typeof(Storage.Database).Assembly, typeof(Program).Assembly,
            typeof(Cablewright.Drawings.Wiring.WiringDrawing).Assembly,
        ];
        Assert.Empty(
            others.SelectMany(other => other.GetTypes()).Where(type => type.IsEnum).Select(type => type.Name).Intersect(words));
    }

    [Fact]
    public void No_cast_makes_one_enumeration_of_another()
    {
        string names = string.Join('|', Vocabulary.GetTypes().Where(type => type.IsEnum).Select(type => type.Name));
        var cast = new Regex($@"\((?:\w+\.)*(?:{names})\??\)[\w(]");
        string[] found =
        [
            .. SourceFiles.Under(Path.Combine(Repository.Root, "src"))
                .Where(file => file.EndsWith(".cs", StringComparison.Ordinal))
                .SelectMany(file => File.ReadLines(file).Where(line => cast.IsMatch(line)))
                .Where(line => !line.Contains("typeof(", StringComparison.Ordinal)),
        ];
        Assert.Empty(found);
    }
}
