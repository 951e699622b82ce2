namespace Cablewright.Engine.Changes;

/// <summary>Changes of one kind to one thing, from the smallest, at 1, to the largest.</summary>
/// <param name="Count">How many; 0: none.</param>
/// <param name="At">The change at a place, 1 to <paramref name="Count"/>.</param>
internal readonly record struct Ladder(int Count, Func<int, Change> At)
{
    /// <summary>A ladder of what is listed.</summary>
    public static Ladder Of<T>(IReadOnlyList<T> values, Func<T, Change> change) =>
        new(values.Count, place => change(values[place - 1]));
}
