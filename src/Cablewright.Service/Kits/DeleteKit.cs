using Cablewright.Contract.Kits;
using Cablewright.Service.Documents;
using Cablewright.Service.Problems;
using Cablewright.Storage;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary><c>DELETE /v1/shops/{shop}/kits/{sku}</c>: deletes a kit.</summary>
internal static class DeleteKit
{
    public static Operation Operation => new(
        "deleteKit", Tag.Kits, "Delete a kit", "Deletes it; with If-Match only if it is in that state.")
    {
        Statuses = [StatusCodes.Status204NoContent],
        IsConditional = true,
        Scope = KeyScopes.KitsWrite,
        Path = [KitAddress.Shop, KitAddress.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.ConditionFailed],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapDelete(KitAddress.OfOne, Answer).DescribedAs<Kit>(Operation);

    private static async Task<IResult> Answer(
        string shop, string sku, HttpContext context, KitStore store, StorageSettings settings, CancellationToken cancellation)
    {
        KitWrite outcome = await store.DeleteAsync(shop, sku, WriteConditions.Of(context.Request), cancellation);
        CatalogueState.Name(context);
        return KitWriteProblems.Of(outcome, shop, sku, settings) ?? Results.NoContent();
    }
}
