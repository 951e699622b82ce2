namespace Cablewright.Engine.Data;

/// <summary>A number with its name and source, one row of a data file.</summary>
/// <param name="Name">What the code calls it.</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Meaning">What it stands for.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record NamedFigure(string Name, double Value, string Unit, string Meaning, string Source, string Provenance);

/// <summary>A number with its source.</summary>
/// <param name="Value">The number.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record SourcedNumber(double Value, string Source, string Provenance);

/// <summary>A list of numbers with their source.</summary>
/// <param name="Values">The numbers, rising.</param>
/// <param name="Source">Where they come from.</param>
/// <param name="Provenance">How they were come by.</param>
public sealed record SourcedNumbers(IReadOnlyList<double> Values, string Source, string Provenance);

internal static class NamedFigures
{
    public static double Named(this NamedFigure[] figures, string name) => figures.Single(figure => figure.Name == name).Value;
}
