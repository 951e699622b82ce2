using System.Collections.Concurrent;
using System.Reflection;
using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>What one member of a request accepts: a quantity of one kind within its range, or of one of several kinds.</summary>
public sealed class QuantityRule
{
    private static readonly ConcurrentDictionary<PropertyInfo, QuantityRule?> Known = new();
    private readonly QuantityRange[] ranges;
    private readonly QuantityKind[] kinds;

    private QuantityRule(IEnumerable<QuantityAttribute> stated)
    {
        ranges = [.. stated.Select(attribute => new QuantityRange(attribute))];
        kinds = [.. ranges.Select(range => range.Kind)];
        Accepted = string.Join("; or ", ranges.Select(range => range.Accepted));
    }

    /// <summary>The range or ranges and an example of each, for people: <c>0.1 m to 30 m, for example "16 ft"</c>.</summary>
    public string Accepted { get; }

    internal IReadOnlyList<QuantityRange> Ranges => ranges;

    /// <summary>The rule that a property's <see cref="QuantityAttribute"/> states, or <c>null</c> without one.</summary>
    /// <exception cref="ArgumentException">The attribute's own texts are no quantities of its kind.</exception>
    public static QuantityRule? Of(PropertyInfo property) => Known.GetOrAdd(property, static property =>
        property.GetCustomAttributes<QuantityAttribute>().ToArray() is { Length: > 0 } stated ? new QuantityRule(stated) : null);

    /// <summary>The rule of a property by name.</summary>
    /// <exception cref="ArgumentException">There is no such property, or it states no quantity.</exception>
    public static QuantityRule Of<T>(string property) =>
        typeof(T).GetProperty(property) is { } info && Of(info) is { } rule
            ? rule
            : throw new ArgumentException($"{typeof(T).Name}.{property} states no quantity.", nameof(property));

    /// <summary>Reads a caller's text. Never throws.</summary>
    public QuantityReading Read(ReadOnlySpan<char> text)
    {
        Scanned scanned = QuantityScanner.Scan(text, kinds);
        if (scanned.Code is not null) return Fail(QuantityFaults.Unreadable(scanned, text, this));
        foreach (QuantityRange range in ranges)
        {
            if (range.Kind != scanned.Kind) continue;
            if (scanned.Value < range.Smallest) return Fail(QuantityFaults.TooSmall(text, range, this));
            if (scanned.Value > range.Largest) return Fail(QuantityFaults.TooLarge(text, range, this));
            return new QuantityReading(scanned.Kind, (double)scanned.Value, null);
        }

        return Fail(QuantityFaults.WrongUnit(text, scanned.Kind, this));
    }

    private static QuantityReading Fail(QuantityFault fault) => new(default, 0, fault);
}
