using System.Collections.Frozen;
using Cablewright.Engine.Conductors;

namespace Cablewright.Service.Quantities;

/// <summary>
/// Reads the quantities of a contract type for the engine. Text that cannot be read becomes a placeholder: the build can then
/// still be searched for further faults, but is never assessed.
/// </summary>
/// <typeparam name="T">The contract type.</typeparam>
internal static class Stated<T>
{
    private const double Placeholder = 1;

    private static readonly FrozenDictionary<string, QuantityRule> Rules = typeof(T).GetProperties()
        .Select(member => (member.Name, Rule: QuantityRule.Of(member)))
        .Where(member => member.Rule is not null)
        .ToFrozenDictionary(member => member.Name, member => member.Rule!, StringComparer.Ordinal);

    /// <summary>The value in the unit that its kind is read into, or <c>null</c> where nothing is stated.</summary>
    public static double? Value(string? text, string member) => text is null ? null : Read(text, member).Value;

    /// <summary>The same, with its kind.</summary>
    public static QuantityReading Read(string text, string member)
    {
        QuantityReading reading = Rules[member].Read(text);
        return reading.Fault is null ? reading : reading with { Value = Placeholder };
    }
}

/// <summary>Reads conductor sizes likewise.</summary>
internal static class StatedSize
{
    private static readonly ConductorSize Placeholder = ConductorSize.All[0];

    /// <summary>The size, or <c>null</c> where nothing is stated.</summary>
    public static ConductorSize? Of(string? text) => text is null ? null : ConductorSize.Parse(text).Size ?? Placeholder;

    /// <summary>Whether it is a gauge off a label.</summary>
    public static bool IsLabel(string? text) => text is not null && ConductorSize.Parse(text).IsLabel;
}
