using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Sizing;
using Cablewright.Reports.Assessments;

namespace Cablewright.Engine.Tests.Rules;

public class FindingTests
{
    /// <summary>Takes a build with more choices than a small budget allows, so it has a test of its own.</summary>
    private const string Budget = "sizing.budget-reached";

    /// <summary>Limits that a build states itself, so that the ruleset has no figure for them.</summary>
    private static readonly string[] OwnLimits = ["limits.maxDrop", "limits.engineOffTime"];

    public static TheoryData<int, string, string> Pairs()
    {
        var pairs = new TheoryData<int, string, string>();
        for (int i = 0; i < FindingPair.All.Count; i++) pairs.Add(i, FindingPair.All[i].Code, FindingPair.All[i].Limit);
        return pairs;
    }

    [Fact]
    public void Every_code_has_a_pair() => Assert.Equal(
        RuleBook.All.Select(rule => rule.Finding.Code).Order(StringComparer.Ordinal),
        FindingPair.All.Select(pair => pair.Code).Append(Budget).Distinct().Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_finding_stands_on_one_side_of_its_limit_and_not_on_the_other(int index, string code, string limit)
    {
        FindingPair pair = FindingPair.All[index];
        string[] must = Codes(Assessed.Of(pair.Must)), mustNot = Codes(Assessed.Of(pair.MustNot));
        Assert.True(must.Contains(code), $"{code} is missing ({limit}); there are {string.Join(", ", must)}");
        Assert.False(mustNot.Contains(code), $"{code} is there ({limit}) among {string.Join(", ", mustNot)}");
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_finding_says_where_why_and_what_to_do(int index, string code, string limit)
    {
        Assert.NotEmpty(limit);
        Finding finding = Assessed.Of(FindingPair.All[index].Must).Findings.First(found => found.Code == code);
        Assert.All(
            [finding.Message, finding.Rule, finding.Source, finding.Remedy, finding.Workings],
            text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.StartsWith("/", finding.Pointer, StringComparison.Ordinal);
        Assert.Equal(finding.Measured is null, finding.Unit is null);
        if (!OwnLimits.Contains(finding.Rule))
            Assert.Contains(RulesetLibrary.Newest.Figures, figure => figure.Id == finding.Rule);
    }

    [Fact]
    public void A_build_with_nothing_wrong_has_no_finding_at_all() => Assert.Empty(Assessed.Of(SampleBuilds.Proved()).Findings);

    [Fact]
    public void A_choice_that_would_take_too_much_work_says_so()
    {
        Build open = OpenBuilds.Star(amplifiers: 8);
        Assert.DoesNotContain(Budget, Codes(Assessor.Assess(open, RulesetLibrary.Newest)));
        Assert.Contains(Budget, Codes(Assessed.WithinWork(open, runs: 10)));
    }

    /// <summary>The budget is the engine's own: its finding names it, and no ruleset has it.</summary>
    [Fact]
    public void The_finding_of_a_budget_names_it_though_no_ruleset_has_it()
    {
        Finding found = Assert.Single(
            Assessed.WithinWork(OpenBuilds.Star(amplifiers: 12), runs: 10).Findings, finding => finding.Code == Budget);
        Assert.Equal("sizing.work-budget", found.Rule);
        Assert.Equal("counted, not timed, so that it is the same on every machine", found.Source);
        Assert.DoesNotContain(RulesetLibrary.Newest.Figures, figure => figure.Id == found.Rule);
    }

    private static string[] Codes(Assessment answer) => [.. answer.Findings.Select(finding => finding.Code).Distinct()];
}
