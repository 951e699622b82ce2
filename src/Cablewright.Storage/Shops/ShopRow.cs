namespace Cablewright.Storage.Shops;

/// <summary>One shop.</summary>
internal sealed class ShopRow
{
    public required string Id { get; set; }

    public DateTimeOffset CreatedAt { get; set; }
}
