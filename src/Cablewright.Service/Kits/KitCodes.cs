namespace Cablewright.Service.Kits;

/// <summary>What can be wrong with the content of a kit, besides what the contract's attributes state.</summary>
public static class KitCodes
{
    /// <summary>A number in the body that is not the one in the address.</summary>
    public const string SkuDiffers = "kit.sku-differs";

    /// <summary>Neither a kit nor a shop's number for one.</summary>
    public const string Missing = "kit.missing";

    /// <summary>Both a kit and a shop's number for one.</summary>
    public const string Twice = "kit.twice";

    /// <summary>A number that none of the shop's kits has.</summary>
    public const string SkuUnknown = "kit.sku-unknown";

    /// <summary>A cursor that names none of the shop's kits.</summary>
    public const string CursorUnknown = "kit.cursor-unknown";

    /// <summary>A part without what makes it useful: a cable's size or length, a fuse's rating.</summary>
    public const string PartMemberMissing = "part.member-missing";

    /// <summary>A figure that a part of this kind does not have.</summary>
    public const string PartMemberForeign = "part.member-foreign";
}
