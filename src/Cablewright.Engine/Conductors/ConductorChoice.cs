namespace Cablewright.Engine.Conductors;

/// <summary>A conductor and how many of it.</summary>
internal readonly record struct ConductorChoice(Conductor Conductor, int Count)
{
    /// <summary>More than so many in parallel are neither stated nor proposed.</summary>
    public const int MostInParallel = 8;

    public double OhmsPerMetreAt20 => Conductor.OhmsPerMetreAt20 / Count;

    public double KilogramsPerMetre => Conductor.KilogramsPerMetre * Count;

    /// <inheritdoc/>
    public override string ToString() => (Count > 1 ? $"{Count} x " : "") + Conductor;
}
