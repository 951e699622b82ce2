using System.Collections.Immutable;
using Cablewright.Storage.Keys;

namespace Cablewright.Storage.Kits;

/// <summary>The state of every shop's kits and keys at one moment. It never changes: a new state is a new one.</summary>
public sealed class Catalogue
{
    private static readonly ImmutableSortedDictionary<string, StoredKit> NoKits =
        ImmutableSortedDictionary.Create<string, StoredKit>(StringComparer.Ordinal);

    private readonly ImmutableDictionary<string, ImmutableSortedDictionary<string, StoredKit>> kits;
    private readonly ImmutableDictionary<string, ShopKey> keys;

    private Catalogue(
        long revision,
        long readAt,
        ImmutableDictionary<string, ImmutableSortedDictionary<string, StoredKit>> kits,
        ImmutableDictionary<string, ShopKey> keys)
    {
        Revision = revision;
        ReadAt = readAt;
        this.kits = kits;
        this.keys = keys;
    }

    internal static Catalogue Empty { get; } =
        new(0, 0, ImmutableDictionary<string, ImmutableSortedDictionary<string, StoredKit>>.Empty,
            ImmutableDictionary<string, ShopKey>.Empty);

    /// <summary>Grows with every change of a kit; the same on every instance.</summary>
    public long Revision { get; }

    /// <summary>When the database was asked for it, as a timestamp of the clock.</summary>
    internal long ReadAt { get; }

    /// <summary>The kits of a shop by number, sorted by it (ordinal); none where there is no such shop.</summary>
    public ImmutableSortedDictionary<string, StoredKit> KitsOf(string shop) => kits.GetValueOrDefault(shop, NoKits);

    /// <summary>
    /// The key with this text, if there is one and its secret is right; whether it is still valid is not asked.
    /// </summary>
    public ShopKey? FindKey(string text) =>
        KeyText.TryRead(text, out string id, out string secret)
        && keys.TryGetValue(id, out ShopKey? key)
        && key.HasSecret(secret) ? key : null;

    internal Catalogue With(IReadOnlyList<KitChange> changes, IEnumerable<ShopKey> keys, long readAt)
    {
        ImmutableDictionary<string, ImmutableSortedDictionary<string, StoredKit>> changed = kits;
        foreach (KitChange change in changes)
        {
            ImmutableSortedDictionary<string, StoredKit> own = changed.GetValueOrDefault(change.Shop, NoKits);
            changed = changed.SetItem(
                change.Shop, change.Kit is { } kit ? own.SetItem(change.Sku, kit) : own.Remove(change.Sku));
        }

        return new(
            changes.Count == 0 ? Revision : changes[^1].Revision,
            readAt,
            changed,
            keys.ToImmutableDictionary(key => key.Id, StringComparer.Ordinal));
    }
}
