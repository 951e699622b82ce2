using Cablewright.Contract.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary><c>GET /v1/shops/{shop}/kits/{sku}</c>: shows a kit.</summary>
internal static class GetKit
{
    public static Operation Operation => new(
        "readKit", Tag.Kits, "Read a kit", "The kit as it was put, with its ETag and the revision of the catalogue.")
    {
        IsCacheable = true,
        IsState = true,
        Scope = KeyScopes.KitsRead,
        Path = [KitAddress.Shop, KitAddress.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.KitUnreadable],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet(KitAddress.OfOne, Answer).DescribedAs<Kit>(Operation);

    private static IResult Answer(string shop, string sku, HttpContext context, ShopKits kits)
    {
        Catalogue catalogue = CatalogueState.Name(context);
        if (!catalogue.KitsOf(shop).TryGetValue(sku, out StoredKit? kit)) return KitAddress.Nothing(shop, sku);
        return kits.Read(kit) is null ? new UnreadableKit(kit) : new JsonAnswer(kit.Body, kit.Tag, Caching.Private);
    }
}
