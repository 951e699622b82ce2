using Cablewright.Contract.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using Cablewright.Storage;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary><c>PUT /v1/shops/{shop}/kits/{sku}</c>: keeps a kit.</summary>
internal static class PutKit
{
    public static Operation Operation => new(
        "putKit", Tag.Kits, "Put a kit",
        "Makes a kit (201) or replaces one (200). To replace one, send If-Match with the ETag of the state that you have seen: "
        + "without it 428, with another state's 412. If-None-Match: * makes a kit only where there is none. Putting what is "
        + "there already changes nothing and is answered with 200, whatever If-Match says, so that a write whose answer was lost "
        + "can be repeated as it was. A shop's kits may be so many, of so many bytes together; beyond that 409 says how many.")
    {
        Body = RequestBody.Of(AnswerJson.Shapes.Kit, () => ExampleKit.Kit),
        Statuses = [StatusCodes.Status200OK, StatusCodes.Status201Created],
        IsConditional = true,
        IsState = true,
        Scope = KeyScopes.KitsWrite,
        Path = [KitAddress.Shop, KitAddress.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.CatalogueFull, ProblemKinds.ConditionFailed, ProblemKinds.Faulty,
            ProblemKinds.ConditionMissing],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPut(KitAddress.OfOne, Answer).DescribedAs<Kit>(Operation);

    private static Task<IResult> Answer(
        string shop, string sku, HttpContext context, KitStore store, StorageSettings settings, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request,
            AnswerJson.Shapes.Kit,
            kit => Keep(shop, sku, kit, context, store, settings, cancellation),
            cancellation);

    private static async Task<IResult> Keep(
        string shop, string sku, Kit kit, HttpContext context, KitStore store, StorageSettings settings,
        CancellationToken cancellation)
    {
        IReadOnlyList<Fault> faults = FaultsOf(kit, sku);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        byte[] body = AnswerJson.Write(kit with { Sku = sku }, AnswerJson.Shapes.Kit);
        KitWrite outcome = await store.PutAsync(shop, sku, body, WriteConditions.Of(context.Request), cancellation);
        CatalogueState.Name(context);
        if (KitWriteProblems.Of(outcome, shop, sku, settings) is { } problem) return problem;
        return new JsonAnswer(body, StoredKit.TagOf(body), Caching.Private)
        {
            Status = outcome == KitWrite.Created ? StatusCodes.Status201Created : StatusCodes.Status200OK,
            Location = outcome == KitWrite.Created ? $"/v1/shops/{shop}/kits/{sku}" : null,
        };
    }

    private static IReadOnlyList<Fault> FaultsOf(Kit kit, string sku)
    {
        IReadOnlyList<Fault> faults = Validators.FaultsOf(kit with { Sku = sku });
        return kit.Sku is null || kit.Sku == sku
            ? faults
            : [new Fault("/sku", KitCodes.SkuDiffers, "the address names another number", Excerpt.Of(kit.Sku), sku), .. faults];
    }
}
