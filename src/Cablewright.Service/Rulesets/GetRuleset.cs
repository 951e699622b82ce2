using System.Collections.Frozen;
using Cablewright.Contract.Rulesets;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Rulesets;

/// <summary><c>GET /v1/rulesets/{id}</c>: one ruleset.</summary>
internal static class GetRuleset
{
    private static readonly FrozenDictionary<string, JsonAnswer> ById = RulesetLibrary.All.ToFrozenDictionary(
        ruleset => ruleset.Id,
        ruleset => TaggedAnswer.Fixed(Detail(ruleset), AnswerJson.Shapes.RulesetDetail),
        StringComparer.Ordinal);

    public static Operation Operation => new(
        "readRuleset", Tag.Rulesets, "Read one ruleset",
        "Every limit and default that a verdict rests on, with its source, and every finding code.")
    {
        IsCacheable = true,
        Path = [new PathParameter("id", "The id of a ruleset, as GET /v1/rulesets lists it.", RulesetLibrary.Newest.Id)],
        Problems = [ProblemKinds.NotFound],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/rulesets/{id}", Answer).DescribedAs<RulesetDetail>(Operation);

    private static IResult Answer(string id) => ById.TryGetValue(id, out JsonAnswer? known)
        ? known
        : ProblemAnswer.NotFound(
            $"There is no ruleset \"{Excerpt.Of(id)}\". This release carries {string.Join(", ", ById.Keys.Order())}.");

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
