using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Audits;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Rules;
using Cablewright.Reports;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>
/// The catalogue has a sentence for everything that is said, and its sentences get every number from their values.
/// </summary>
public partial class CatalogueTests
{
    private static readonly IReadOnlyDictionary<string, Template> Sentences = Catalogue.English.Templates;

    [Fact]
    public void No_number_stands_in_a_sentence_itself() => Assert.All(
        Sentences.Where(sentence => !sentence.Key.StartsWith("size.", StringComparison.Ordinal)),
        sentence => Assert.DoesNotContain(sentence.Value.Literals, text => Digit().IsMatch(text)));

    [Fact]
    public void Every_kind_of_assumption_has_its_reason() => Assert.Empty(
        Enum.GetValues<AssumptionKind>().Select(kind => $"assumption.{Keys.Of(kind)}.reason").Except(Sentences.Keys));

    [Fact]
    public void Every_kind_of_fault_has_its_sentences() => Assert.Empty(
        Enum.GetValues<BuildFaultKind>().Select(kind => "fault." + Keys.Of(kind))
            .SelectMany(key => (string[])[key + ".detail", key + ".accepted"]).Except(Sentences.Keys));

    [Fact]
    public void Every_step_has_its_sentence() => Assert.All(
        typeof(Step).GetNestedTypes(BindingFlags.NonPublic).Where(step => step != typeof(Step.LimitAmplifier)),
        step => Assert.Contains("change." + Keys.OfName(step.Name), Sentences.Keys));

    [Fact]
    public void Every_figure_of_power_has_its_sentence() => Assert.Empty(
        Enum.GetValues<PowerFigure>().Select(figure => "change.limit-" + Keys.Of(figure)).Except(Sentences.Keys));

    [Fact]
    public void Every_reason_why_a_text_is_no_size_has_its_sentence() => Assert.Empty(
        Enum.GetValues<SizeProblemKind>().Select(kind => "size." + Keys.Of(kind)).Except(Sentences.Keys));

    [Fact]
    public void Every_code_of_a_finding_has_a_sentence() => Assert.All(
        RuleBook.All.Select(rule => rule.Finding).Concat(KitCodes.All).Concat(AuditCodes.All)
            .Select(finding => "finding." + finding.Code),
        code => Assert.Contains(
            Sentences.Keys, key => key == code || key.StartsWith(code + ".", StringComparison.Ordinal)));

    /// <summary>The engine's names of members are the contract's, but for the one that nobody can state.</summary>
    [Fact]
    public void Every_member_is_one_of_the_contract()
    {
        string[] known =
        [
            .. typeof(Param).Assembly.GetTypes()
                .Where(type => type.Namespace == typeof(Contract.Builds.Build).Namespace
                    || type.Namespace == typeof(BenchReport).Namespace)
                .SelectMany(type => type.GetProperties())
                .Select(member => JsonNamingPolicy.CamelCase.ConvertName(member.Name)),
        ];
        Assert.Empty(Enum.GetValues<Member>().Except([Member.Whole, Member.LayFactor]).Select(Pointers.NameOf).Except(known));
    }

    [Theory]
    [InlineData("{amps} in {metres}", UnitSystem.Us, "150 A in 17 ft")]
    [InlineData("{amps} in {metres}", UnitSystem.Metric, "150 A in 5.18 m")]
    [InlineData("{amps:number} of {runs}", UnitSystem.Us, "150 of main, feed")]
    [InlineData("{runs:each:run \"*\"}", UnitSystem.Us, "run \"main\", run \"feed\"")]
    [InlineData("{runs:or}", UnitSystem.Us, "main or feed")]
    [InlineData("{share}", UnitSystem.Us, "3.5 %")]
    [InlineData("{watts:exact}", UnitSystem.Us, "1234.5 W")]
    [InlineData("{shortMetres:taped}", UnitSystem.Metric, "45 cm")]
    [InlineData("{shortMetres:stated}", UnitSystem.Metric, "0.45 m")]
    public void A_value_is_written_as_its_name_and_form_say(string template, UnitSystem units, string text)
    {
        Params values = new()
        {
            ["amps"] = 150,
            ["metres"] = 5.18,
            ["shortMetres"] = 0.45,
            ["share"] = 0.035,
            ["watts"] = 1234.5,
            ["runs"] = Param.Of(["main", "feed"]),
        };
        Assert.Equal(text, Template.Parse(template).Fill(values, units));
    }

    [GeneratedRegex("[0-9]")]
    private static partial Regex Digit();
}
