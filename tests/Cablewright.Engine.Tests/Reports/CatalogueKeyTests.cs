using System.Reflection;
using System.Text.RegularExpressions;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Variations;
using Cablewright.Reports.Assessments;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>The keys of the catalogue are those that the reports ask for, and what fills a sentence's holes is there.</summary>
/// <remarks>
/// A key is put together of literals of the compiled reports, codes and names of members. That every finding is said, and its
/// remedy, show the tests of the findings, which make each once.
/// </remarks>
public partial class CatalogueKeyTests
{
    private static readonly IReadOnlyDictionary<string, Template> Sentences = Catalogue.English.Templates;

    private static readonly IReadOnlyList<string> Literals = CompiledTexts.Of(typeof(Catalogue).Assembly);

    [Fact]
    public void Every_key_is_asked_for() => Assert.All(Sentences.Keys, key => Assert.True(IsAskedFor(key), key));

    [Theory]
    [InlineData("remedy.fuse.below-own-fuses", true)]
    [InlineData("summary.numbers.collapse.quieter", true)]
    [InlineData("remedy.fuse.melted", false)]
    [InlineData("summary.poem", false)]
    public void A_key_that_nothing_asks_for_is_found(string key, bool isAskedFor) => Assert.Equal(isAskedFor, IsAskedFor(key));

    [Fact]
    public void Every_key_that_stands_in_code_has_a_sentence()
    {
        HashSet<string> kinds = [.. Sentences.Keys.Select(key => key.Split('.')[0])];
        string[] keys = [.. Literals.Where(literal => Key().IsMatch(literal) && kinds.Contains(literal.Split('.')[0]))];
        Assert.Contains("remedy.fuse.at-battery", keys);
        Assert.All(keys, key => Assert.Contains(
            Sentences.Keys, known => known == key || known.StartsWith(key + ".", StringComparison.Ordinal)));
    }

    /// <summary>A remedy or a working that no code names is made of the values of the finding's message.</summary>
    [Fact]
    public void What_the_code_of_a_rule_alone_leads_to_has_only_holes_of_its_message()
    {
        string[] keys =
        [
            .. RuleBook.All.SelectMany(rule => (string[])["remedy." + rule.Finding.Code, "workings." + rule.Finding.Code])
                .Where(Sentences.ContainsKey).Except(Literals),
        ];
        Assert.Contains("remedy.supply.average-above-charger", keys);
        Assert.All(keys, key => Assert.Subset(HolesOfMessage(key[(key.IndexOf('.') + 1)..]), Sentences[key].Names.ToHashSet()));
    }

    [Fact]
    public void Every_tolerance_is_said_both_ways()
    {
        Build build = SampleBuilds.OneAmplifier() with
        {
            Include = [Extra.Robustness],
            Tolerances = new Tolerances
            {
                EfficiencyShare = 0.05,
                ChargingVolts = 0.3,
                LengthShare = 0.1,
                SurroundingsKelvin = 10,
            },
        };
        var wording = new ToleranceWording(BuildCompletion.Complete(
            build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)));
        Assert.Equal(
            "efficiency 5 % higher and charging voltage 0.3 V higher and lengths 10 % longer and surroundings 18 F (10 K) hotter",
            wording.Of([.. Enum.GetValues<Tolerance>().Select(what => new Deviation(what, 1))]));
        Assert.Equal(
            "efficiency 5 % lower and charging voltage 0.3 V lower and lengths 10 % shorter and surroundings 18 F (10 K) cooler",
            wording.Of([.. Enum.GetValues<Tolerance>().Select(what => new Deviation(what, -1))]));
    }

    private static readonly HashSet<string> Pieces =
    [
        .. Literals.Where(literal => Piece().IsMatch(literal)), "-",
        .. RuleBook.All.Select(rule => rule.Finding).Concat(KitCodes.All).Concat(AuditCodes.All)
            .Select(finding => finding.Code),
        .. typeof(Release).Assembly.GetTypes().Concat(typeof(KitPartKind).Assembly.GetTypes()).Where(type => type.IsEnum)
            .SelectMany(Enum.GetNames).Select(Keys.OfName),
        .. typeof(Step).GetNestedTypes(BindingFlags.NonPublic).Select(step => Keys.OfName(step.Name)),
    ];

    private static bool IsAskedFor(string key) => key.Length == 0
        || Enumerable.Range(1, key.Length).Any(end => Pieces.Contains(key[..end]) && IsAskedFor(key[end..]));

    private static HashSet<string> HolesOfMessage(string code) =>
    [
        .. Sentences.Where(sentence => sentence.Key == "finding." + code
            || sentence.Key.StartsWith($"finding.{code}.", StringComparison.Ordinal))
            .SelectMany(sentence => sentence.Value.Names),
    ];

    [GeneratedRegex(@"^[a-z]+\.[a-z.-]*[a-z]$")]
    private static partial Regex Key();

    /// <summary>Part of a key, and no short word that could stand for any part of one.</summary>
    [GeneratedRegex(@"^(\.|[a-z-]*\.[a-z.-]*|[a-z-]{4,})$")]
    private static partial Regex Piece();
}
