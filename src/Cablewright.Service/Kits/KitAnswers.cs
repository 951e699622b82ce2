using System.Globalization;
using Cablewright.Contract.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using Cablewright.Storage;
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
        string shop, string sku, HttpContext context, KitStore store, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request, AnswerJson.Shapes.Kit, kit => Put(shop, sku, kit, context, store, cancellation), cancellation);

    private static async Task<IResult> Put(
        string shop, string sku, Kit kit, HttpContext context, KitStore store, CancellationToken cancellation)
    {
        IReadOnlyList<Fault> faults = FaultsOf(kit, sku);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        byte[] body = AnswerJson.Write(kit with { Sku = sku }, AnswerJson.Shapes.Kit);
        KitWrite outcome = await store.PutAsync(shop, sku, body, WriteConditions.Of(context.Request), cancellation);
        NameState(context);
        if (ProblemOf(outcome, context) is { } problem) return problem;
        return new JsonAnswer(body, StoredKit.TagOf(body), AskAgain)
        {
            Status = outcome == KitWrite.Created ? StatusCodes.Status201Created : StatusCodes.Status200OK,
            Location = outcome == KitWrite.Created ? $"/v1/shops/{shop}/kits/{sku}" : null,
        };
    }

    /// <summary>Shows a kit.</summary>
    public static IResult Get(string shop, string sku, HttpContext context, ShopKits kits)
    {
        Catalogue catalogue = NameState(context);
        if (!catalogue.KitsOf(shop).TryGetValue(sku, out StoredKit? kit)) return new ProblemAnswer(ProblemKinds.NotFound);
        return kits.Read(kit) is null ? new UnreadableKit(kit) : new JsonAnswer(kit.Body, kit.Tag, AskAgain);
    }

    /// <summary>Deletes a kit.</summary>
    public static async Task<IResult> Delete(
        string shop, string sku, HttpContext context, KitStore store, CancellationToken cancellation)
    {
        KitWrite outcome = await store.DeleteAsync(shop, sku, WriteConditions.Of(context.Request), cancellation);
        NameState(context);
        return ProblemOf(outcome, context) ?? Results.NoContent();
    }

    /// <summary>
    /// The newest state of the catalogue, for a caller whose key is in it. The answer says which it rests on, and how many
    /// whole seconds ago the database was last asked whether it still holds.
    /// </summary>
    public static Catalogue NameState(HttpContext context)
    {
        Catalogues catalogues = context.RequestServices.GetRequiredService<Catalogues>();
        Catalogue catalogue = catalogues.Newest!;
        context.Response.Headers[RevisionHeader] = catalogue.Revision.ToString(CultureInfo.InvariantCulture);
        context.Response.Headers.Age = ((long)catalogues.AgeOf(catalogue).TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return catalogue;
    }

    private static IReadOnlyList<Fault> FaultsOf(Kit kit, string sku)
    {
        IReadOnlyList<Fault> faults = KitValidator.FaultsOf(kit with { Sku = sku });
        return kit.Sku is null || kit.Sku == sku
            ? faults
            : [new Fault("/sku", KitCodes.SkuDiffers, "the address names another number", Excerpt.Of(kit.Sku), sku), .. faults];
    }

    private static ProblemAnswer? ProblemOf(KitWrite outcome, HttpContext context)
    {
        StorageSettings settings = context.RequestServices.GetRequiredService<StorageSettings>();
        return outcome switch
        {
            KitWrite.Missing => new(ProblemKinds.NotFound),
            KitWrite.ConditionFailed => new(ProblemKinds.ConditionFailed),
            KitWrite.ConditionMissing => new(ProblemKinds.ConditionMissing),
            KitWrite.TooMany => Full($"at most {settings.KitsPerShop} kits"),
            KitWrite.TooLarge => Full($"kits of at most {settings.KitBytesPerShop} bytes together"),
            _ => null,
        };
    }

    private static ProblemAnswer Full(string quota) => new(
        ProblemKinds.CatalogueFull, $"A shop may have {quota}. {ProblemKinds.CatalogueFull.Meaning}", []);
}
