namespace Cablewright.Storage.Kits;

/// <summary>
/// Counts the writes to the kits. A write locks it until it is committed, so that revisions become visible in order.
/// </summary>
internal sealed class RevisionRow
{
    public const int OfKits = 1;

    public int Id { get; set; }

    public long Value { get; set; }
}
