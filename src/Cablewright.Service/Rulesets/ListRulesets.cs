using Cablewright.Contract.Rulesets;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;

namespace Cablewright.Service.Rulesets;

/// <summary><c>GET /v1/rulesets</c>: the rulesets in brief.</summary>
internal static class ListRulesets
{
    private static readonly JsonAnswer List = TaggedAnswer.Fixed(
        new RulesetList { Rulesets = [.. RulesetLibrary.All.Select(Brief)] }, AnswerJson.Shapes.RulesetList);

    public static Operation Operation => new(
        "listRulesets", Tag.Rulesets, "List the rulesets", "All rulesets of this release, the newest first.")
    {
        IsCacheable = true,
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/rulesets", Answer).DescribedAs<RulesetList>(Operation);

    private static JsonAnswer Answer() => List;

    private static RulesetEntry Brief(Ruleset ruleset) =>
        new() { Id = ruleset.Id, Published = ruleset.Published, Summary = ruleset.Summary };
}
