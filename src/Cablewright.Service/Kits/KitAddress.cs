using Cablewright.Service.Documents;

namespace Cablewright.Service.Kits;

/// <summary>Where a shop's kits are.</summary>
internal static class KitAddress
{
    /// <summary>The part of a path that names the shop whose things it leads to.</summary>
    public const string ShopName = "shop";

    public const string OfAll = "/v1/shops/{shop}/kits";
    public const string OfOne = OfAll + "/{sku}";

    public static readonly PathParameter Shop = new(ShopName, "The shop's id; the key must be one of its keys.", "demo");

    public static readonly PathParameter Sku = new("sku", "The shop's number for the kit.", "AK-150");
}
