using Cablewright.Vocabulary;

namespace Cablewright.Service.Kits;

/// <summary>What can be wrong with the content of a kit, besides what the contract's attributes state.</summary>
internal static class KitCodes
{
    [Meaning("A kit's number that is not the one in the address.")]
    public const string SkuDiffers = "kit.sku-differs";

    [Meaning("A kit check with neither a kit nor a shop and its number for one.")]
    public const string Missing = "kit.missing";

    [Meaning("A kit check with both a kit and a shop's number for one.")]
    public const string Twice = "kit.twice";

    [Meaning("A number that none of the shop's kits has.")]
    public const string SkuUnknown = "kit.sku-unknown";

    [Meaning("A cursor that names none of the shop's kits.")]
    public const string CursorUnknown = "kit.cursor-unknown";

    [Meaning("A part without what it is known by: a cable's size and length, a fuse's rating.")]
    public const string PartMemberMissing = "part.member-missing";

    [Meaning("A figure that a part of this kind does not have.")]
    public const string PartMemberForeign = "part.member-foreign";

    [Meaning("A price without a currency.")]
    public const string CurrencyMissing = "currency.missing";
}
