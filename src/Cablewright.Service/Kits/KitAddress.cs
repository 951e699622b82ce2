using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Kits;

/// <summary>Where a shop's kits are.</summary>
internal static class KitAddress
{
    /// <summary>The part of a path that names the shop whose things it leads to.</summary>
    public const string ShopName = "shop";

    public const string OfAll = "/v1/shops/{shop}/kits";
    public const string OfOne = OfAll + "/{sku}";

    /// <summary>The shop has no such kit.</summary>
    public static ProblemAnswer Nothing(string shop, string sku) =>
        ProblemAnswer.NotFound($"The shop {shop} keeps no kit \"{Excerpt.Of(sku)}\".");

    public static readonly PathParameter Shop = new(ShopName, "The shop's id; the key must be one of its keys.", "demo");

    public static readonly PathParameter Sku = new("sku", "The shop's number for the kit.", "AK-150");
}
