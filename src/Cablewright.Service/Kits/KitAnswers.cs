using Cablewright.Contract.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary><c>PUT</c>, <c>GET</c> and <c>DELETE /v1/shops/{shop}/kits/{sku}</c>.</summary>
internal static class KitAnswers
{
    /// <summary>Names the state of the catalogue that an answer rests on.</summary>
    public const string RevisionHeader = "Catalogue-Revision";

    private const string AskAgain = "private, no-cache";

    /// <summary>Keeps a kit.</summary>
    public static Task<IResult> Put(
        string shop, string sku, HttpContext context, KitStore store, Catalogues catalogues, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request, AnswerJson.Shapes.Kit, kit => Put(shop, sku, kit, context, store, catalogues, cancellation), cancellation);

    private static async Task<IResult> Put(
        string shop, string sku, Kit kit, HttpContext context, KitStore store, Catalogues catalogues,
        CancellationToken cancellation)
    {
        IReadOnlyList<Fault> faults = FaultsOf(kit, sku);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        byte[] body = AnswerJson.Write(kit with { Sku = sku }, AnswerJson.Shapes.Kit);
        KitWrite outcome = await store.PutAsync(shop, sku, body, WriteConditions.Of(context.Request), cancellation);
        if (ProblemOf(outcome) is { } problem) return new ProblemAnswer(problem);
        NameRevision(context, catalogues.Newest!);
        return new JsonAnswer(body, StoredKit.TagOf(body), AskAgain)
        {
            Status = outcome == KitWrite.Created ? StatusCodes.Status201Created : StatusCodes.Status200OK,
            Location = outcome == KitWrite.Created ? $"/v1/shops/{shop}/kits/{sku}" : null,
        };
    }

    /// <summary>Shows a kit.</summary>
    public static IResult Get(string shop, string sku, HttpContext context, Catalogues catalogues)
    {
        NameRevision(context, catalogues.Newest!);
        return catalogues.Newest!.KitsOf(shop).TryGetValue(sku, out StoredKit? kit)
            ? new JsonAnswer(kit.Body, kit.Tag, AskAgain)
            : new ProblemAnswer(ProblemKinds.NotFound);
    }

    /// <summary>Deletes a kit.</summary>
    public static async Task<IResult> Delete(
        string shop, string sku, HttpContext context, KitStore store, Catalogues catalogues, CancellationToken cancellation)
    {
        KitWrite outcome = await store.DeleteAsync(shop, sku, WriteConditions.Of(context.Request), cancellation);
        NameRevision(context, catalogues.Newest!);
        return ProblemOf(outcome) is { } problem ? new ProblemAnswer(problem) : Results.NoContent();
    }

    /// <summary>Says on which state of the catalogue the answer rests.</summary>
    public static void NameRevision(HttpContext context, Catalogue catalogue) => context.Response.Headers[RevisionHeader] =
        catalogue.Revision.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static IReadOnlyList<Fault> FaultsOf(Kit kit, string sku)
    {
        IReadOnlyList<Fault> faults = KitValidator.FaultsOf(kit with { Sku = sku });
        return kit.Sku is null || kit.Sku == sku
            ? faults
            : [new Fault("/sku", KitCodes.SkuDiffers, "the address names another number", Excerpt.Of(kit.Sku), sku), .. faults];
    }

    private static ProblemKind? ProblemOf(KitWrite outcome) => outcome switch
    {
        KitWrite.Missing => ProblemKinds.NotFound,
        KitWrite.ConditionFailed => ProblemKinds.ConditionFailed,
        KitWrite.ConditionMissing => ProblemKinds.ConditionMissing,
        KitWrite.Full => ProblemKinds.CatalogueFull,
        _ => null,
    };
}
