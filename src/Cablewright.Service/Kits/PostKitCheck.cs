using Cablewright.Contract.Kits;
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

namespace Cablewright.Service.Kits;

/// <summary><c>POST /v1/kit-checks</c>: a build and a kit in, whether the one serves the other out.</summary>
internal static class PostKitCheck
{
    public static Operation Operation => new(
        "checkKit", Tag.Kits, "Check a kit against a build",
        "What the job needs against what the kit holds. The kit's cables and fuses are tried in the build by the full "
        + "assessment: a cable is too thin where the build fails with it. Each part that is missing, short, thin or wrongly "
        + "fused is a finding with its remedy. The kit stands in the request, or is one that a shop keeps here, which its key "
        + "must be sent for.")
    {
        Computes = true,
        Scope = KeyScopes.KitsRead,
        IsKeyOptional = true,
        Body = RequestBody.Of(
            AnswerJson.Shapes.KitCheck, () => new KitCheck { Build = QuickBuild.Example, Kit = ExampleKit.Kit }),
        Problems = [ProblemKinds.NotFound, ProblemKinds.Faulty, ProblemKinds.KitUnreadable],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/kit-checks", Answer).DescribedAs<KitAnswer>(Operation);

    private static Task<IResult> Answer(
        HttpContext context, ShopKits kits, Computations computations, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request,
            AnswerJson.Shapes.KitCheck,
            asked => computations.Run(context, computation => Check(asked, context, kits, computation), cancellation),
            cancellation);

    private static IResult Check(KitCheck asked, HttpContext context, ShopKits kits, Computation computation)
    {
        if (asked.Shop is not null && Caller.Of(context).Refusal(asked.Shop, KeyScopes.KitsRead) is { } refusal) return refusal;
        Catalogue? catalogue = asked.Shop is null ? null : CatalogueState.Name(context);
        StoredKit? kept = asked.Sku is null ? null : catalogue?.KitsOf(asked.Shop!).GetValueOrDefault(asked.Sku);
        Engine.Builds.Build build = BuildMapping.ToEngine(asked.Build);
        Fault[] faults =
        [
            .. BuildFaults.Of(asked.Build, build, computation.HasKey).Select(fault => fault.Below("/build")),
            .. Validators.FaultsOf(asked), .. UnknownKit(asked, kept),
        ];
        if (faults.Length > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        Engine.Kits.Kit? kit = kept is null ? KitMapping.ToEngine(asked.Kit!) : kits.Read(kept);
        if (kit is null) return new UnreadableKit(kept!);

        Ruleset ruleset = RulesetCheck.Named(asked.Build.Ruleset);
        KitAnswer answer = new KitChecker(build, ruleset, computation.MeterFor(build)).Check(kit, catalogue?.Revision);
        return TaggedAnswer.Of(answer, AnswerJson.Shapes.KitAnswer);
    }

    private static IEnumerable<Fault> UnknownKit(KitCheck asked, StoredKit? kept)
    {
        if (asked.Kit is null && asked is { Shop: not null, Sku: not null } && kept is null)
            yield return new Fault(
                "/sku", KitCodes.SkuUnknown, "the shop keeps no kit of that number", Excerpt.Of(asked.Sku),
                $"a number that GET /v1/shops/{asked.Shop}/kits lists");
    }
}
