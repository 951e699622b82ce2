namespace Cablewright.Engine.Rulesets;

/// <summary>Hands each figure of a data file to the one member that holds it, and gathers what does not fit.</summary>
internal sealed class FigureReader
{
    private readonly Dictionary<string, Figure> untaken = new(StringComparer.Ordinal);
    private readonly HashSet<string> taken = new(StringComparer.Ordinal);
    private readonly List<string> faults = [];

    public FigureReader(IReadOnlyList<Figure> figures)
    {
        foreach (Figure figure in figures)
        {
            if (!untaken.TryAdd(figure.Id, figure)) faults.Add($"{figure.Id} stands there twice");
        }
    }

    /// <summary>The figure with this id. What is wrong with it is told by <see cref="ThrowIfFaulty"/>, all at once.</summary>
    public Figure Take(string id, string unit)
    {
        if (!taken.Add(id)) faults.Add($"{id} is asked for by two members");
        else if (!untaken.Remove(id, out Figure? figure)) faults.Add($"{id} is missing");
        else if (figure.Unit != unit) faults.Add($"{id} is in \"{figure.Unit}\" and not in \"{unit}\"");
        else return figure;
        return new Figure(id, double.NaN, unit, "", "", "");
    }

    /// <summary>Ends the reading, once every member has its figure.</summary>
    /// <param name="ruleset">The id of the ruleset.</param>
    /// <exception cref="InvalidDataException">
    /// A figure is missing, stands there twice, is in another unit, or belongs to no member; the message lists them all.
    /// </exception>
    public void ThrowIfFaulty(string ruleset)
    {
        string[] all = [.. faults, .. untaken.Keys.Select(id => $"{id} is unknown")];
        if (all.Length > 0) throw new InvalidDataException($"The figures of ruleset {ruleset}: {string.Join("; ", all)}.");
    }
}
