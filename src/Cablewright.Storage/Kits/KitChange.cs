namespace Cablewright.Storage.Kits;

/// <summary>What became of a kit at a revision.</summary>
/// <param name="Shop">Whose it is.</param>
/// <param name="Sku">The shop's number for it.</param>
/// <param name="Body">The kit; <c>null</c> where it was deleted.</param>
/// <param name="Tag">What identifies these bytes; <c>null</c> where it was deleted.</param>
/// <param name="Revision">When it changed.</param>
internal sealed record KitChange(string Shop, string Sku, byte[]? Body, string? Tag, long Revision)
{
    /// <summary>The kit, if it is still there.</summary>
    public StoredKit? Kit => Body is null || Tag is null ? null : new(Sku, Body, Tag);
}
