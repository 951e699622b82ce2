namespace Cablewright.Storage.Kits;

/// <summary>One kit of one shop; without a body, one that was deleted, so that every instance hears of it.</summary>
internal sealed class KitRow
{
    public required string Shop { get; set; }

    public required string Sku { get; set; }

    public byte[]? Body { get; set; }

    public string? Tag { get; set; }

    public long Revision { get; set; }

    public DateTimeOffset ChangedAt { get; set; }
}
