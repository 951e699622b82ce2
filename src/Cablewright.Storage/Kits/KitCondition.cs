namespace Cablewright.Storage.Kits;

/// <summary>On what a write of a kit depends (RFC 9110, 13.1).</summary>
/// <param name="IfMatch">The tags of which the kit must have one; empty: it must be there; <c>null</c>: not asked.</param>
/// <param name="IfAbsent">The kit must not be there.</param>
public sealed record KitCondition(IReadOnlyList<string>? IfMatch, bool IfAbsent)
{
    internal bool Holds(string? tag) =>
        (IfMatch is null || (tag is not null && (IfMatch.Count == 0 || IfMatch.Contains(tag, StringComparer.Ordinal))))
        && (!IfAbsent || tag is null);
}

/// <summary>How a write ended.</summary>
public enum KitWrite
{
    /// <summary>A new kit is kept.</summary>
    Created,

    /// <summary>The kit is replaced.</summary>
    Replaced,

    /// <summary>The kit was so already.</summary>
    Unchanged,

    /// <summary>The kit is deleted.</summary>
    Deleted,

    /// <summary>There is no such kit.</summary>
    Missing,

    /// <summary>The condition does not hold.</summary>
    ConditionFailed,

    /// <summary>The kit is there, and the caller did not say which state of it to replace.</summary>
    ConditionMissing,

    /// <summary>The shop has as many kits as it may have.</summary>
    TooMany,

    /// <summary>The shop's kits have as many bytes as they may have.</summary>
    TooLarge,
}
