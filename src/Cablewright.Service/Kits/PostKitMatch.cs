using Cablewright.Contract.Kits;
using Cablewright.Engine;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Service.Rulesets;
using Cablewright.Service.Validation;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Kits;

/// <summary><c>POST /v1/kit-matches</c>: a build and a shop in, which of the shop's kits serve it out.</summary>
internal static class PostKitMatch
{
    private const int UsualLimit = 20;

    public static Operation Operation => new(
        "matchKits", Tag.Kits, "Find which of a shop's kits serve a build",
        "Every kit of the shop held against the build: those that serve first, the cheapest of them before the others, and what "
        + "each of the others lacks. Kits that cannot be read are left out, and their numbers told.")
    {
        Computes = true,
        Scope = KeyScopes.KitsRead,
        Body = RequestBody.Of(
            AnswerJson.Shapes.KitMatchRequest, () => new KitMatchRequest { Build = QuickBuild.Example, Shop = "demo" }),
        Problems = [ProblemKinds.NotFound, ProblemKinds.Faulty],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/kit-matches", Answer).DescribedAs<KitMatches>(Operation);

    private static Task<IResult> Answer(
        HttpContext context, ShopKits kits, Computations computations, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request,
            AnswerJson.Shapes.KitMatchRequest,
            asked => computations.Run(context, computation => Find(asked, context, kits, computation), cancellation),
            cancellation);

    private static IResult Find(KitMatchRequest asked, HttpContext context, ShopKits kits, Computation computation)
    {
        if (Caller.Of(context).Refusal(asked.Shop, KeyScopes.KitsRead) is { } refusal) return refusal;
        Catalogue catalogue = CatalogueState.Name(context);
        Engine.Builds.Build build = BuildMapping.ToEngine(asked.Build);
        string? after = asked.After is null ? null : Cursor.Read(asked.After);
        List<Fault> faults =
        [
            .. BuildFaults.Of(asked.Build, build, computation.HasKey).Select(fault => fault.Below("/build")),
            .. Validators.FaultsOf(asked),
        ];
        if (asked.After is not null && (after is null || !catalogue.KitsOf(asked.Shop).ContainsKey(after)))
            faults.Add(new Fault(
                "/after", KitCodes.CursorUnknown, "no kit of the shop is meant by this: it may be gone; start again without it",
                Excerpt.Of(asked.After), "\"next\" of the answer before"));
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        return TaggedAnswer.Of(Match(asked, build, catalogue, after, kits, computation), AnswerJson.Shapes.KitMatches);
    }

    private static KitMatches Match(
        KitMatchRequest asked, Engine.Builds.Build build, Catalogue catalogue, string? after, ShopKits kits,
        Computation computation)
    {
        Ruleset ruleset = RulesetCheck.Named(asked.Build.Ruleset);
        var kept = catalogue.KitsOf(asked.Shop).Values.Select(one => (one.Sku, Kit: kits.Read(one))).ToArray();
        MatchedKits all = KitMatcher.Match(
            build, kept.Select(one => one.Kit).OfType<Engine.Kits.Kit>(), ruleset, computation.MeterFor(build));
        IEnumerable<MatchedKit> rest = after is null ? all.Found : all.Found.SkipWhile(match => match.Kit.Sku != after).Skip(1);
        MatchedKit[] page = [.. rest.Take((asked.Limit ?? UsualLimit) + 1)];
        MatchedKit[] shown = [.. page.Take(asked.Limit ?? UsualLimit)];
        return new KitMatches
        {
            Revision = catalogue.Revision,
            Ruleset = ruleset.Id,
            EngineVersion = Release.EngineVersion,
            Serving = Count(KitVerdict.Serves),
            ServingWithChange = Count(KitVerdict.ServesWithChange),
            NotServing = Count(KitVerdict.DoesNotServe),
            Untried = all.Untried,
            Unreadable = [.. kept.Where(one => one.Kit is null).Select(one => one.Sku)],
            Kits = [.. shown.Select(MatchOf)],
            Next = page.Length > shown.Length ? Cursor.Behind(shown[^1].Kit.Sku!) : null,
            Needs = all.Needs,
            SafetyNotes = ruleset.SafetyNotes,
        };

        int Count(KitVerdict verdict) => all.Found.Count(match => match.Answer.Verdict == verdict);
    }

    /// <summary>One kit of the shop.</summary>
    private static KitMatch MatchOf(MatchedKit match) => new()
    {
        Sku = match.Kit.Sku!,
        Name = match.Kit.Name,
        Price = match.Kit.Price,
        Currency = match.Kit.Currency,
        Verdict = match.Answer.Verdict,
        Summary = match.Answer.Summary,
        Findings = match.Answer.Findings,
    };
}
