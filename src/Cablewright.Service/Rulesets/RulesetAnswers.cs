using System.Collections.Frozen;
using Cablewright.Contract.Rulesets;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Rulesets;

/// <summary><c>GET /v1/rulesets</c> and <c>GET /v1/rulesets/{id}</c>.</summary>
internal static class RulesetAnswers
{
    private static readonly FixedAnswer List = FixedAnswer.Of(
        new RulesetList { Rulesets = [.. RulesetLibrary.All.Select(Brief)] }, AnswerJson.Shapes.RulesetList);

    private static readonly FrozenDictionary<string, FixedAnswer> ById = RulesetLibrary.All.ToFrozenDictionary(
        ruleset => ruleset.Id,
        ruleset => FixedAnswer.Of(Detail(ruleset), AnswerJson.Shapes.RulesetDetail),
        StringComparer.Ordinal);

    /// <summary>Answers with the rulesets in brief.</summary>
    public static IResult All() => List.Answer();

    /// <summary>Answers with one ruleset.</summary>
    public static IResult One(string id) => ById.TryGetValue(id, out FixedAnswer? known)
        ? known.Answer()
        : new ProblemAnswer(
            ProblemKinds.NotFound, $"This release carries the rulesets {string.Join(", ", ById.Keys.Order())}.", []);

    private static RulesetEntry Brief(Ruleset ruleset) =>
        new() { Id = ruleset.Id, Published = ruleset.Published, Summary = ruleset.Summary };

    private static RulesetDetail Detail(Ruleset ruleset) => new()
    {
        Id = ruleset.Id,
        Published = ruleset.Published,
        Summary = ruleset.Summary,
        SafetyNotes = ruleset.SafetyNotes,
        Figures = [.. ruleset.Figures.Select(figure => new RulesetFigure
        {
            Id = figure.Id,
            Value = figure.Value,
            Unit = figure.Unit,
            Meaning = figure.Meaning,
            Source = figure.Source,
            Provenance = figure.Provenance,
        })],
        Findings = [.. FindingCodes.All.Select(code => new FindingKind { Code = code.Code, Meaning = code.Meaning })],
    };
}
