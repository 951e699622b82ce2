using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>What of a kit is put into each run: equal where two kits make the same build.</summary>
/// <param name="runs">In the order of the build.</param>
internal sealed class TrialFittings(RunFitting[] runs) : IEquatable<TrialFittings>
{
    public RunFitting this[int run] => runs[run];

    /// <inheritdoc/>
    public bool Equals(TrialFittings? other) => other is not null && runs.AsSpan().SequenceEqual(other.All);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TrialFittings);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (RunFitting run in runs) hash.Add(run);
        return hash.ToHashCode();
    }

    private ReadOnlySpan<RunFitting> All => runs;
}

/// <summary>What of a kit is put into one run.</summary>
/// <param name="Conductor">The cable; <c>null</c>: it stays as it is.</param>
/// <param name="InsulationCelsius">Its rating, where one is stated.</param>
/// <param name="Fuse">The fuse at its start; <c>null</c>: it stays as it is.</param>
/// <param name="FarFuse">The fuse at its end.</param>
internal readonly record struct RunFitting(
    Conductor? Conductor, double? InsulationCelsius, FuseFitting? Fuse, FuseFitting? FarFuse)
{
    /// <summary>The run with it.</summary>
    public Run In(Run run) => run with
    {
        Conductor = Conductor is null ? run.Conductor : new ConductorWish
        {
            Size = Conductor.Size,
            Material = Conductor.Material,
            InsulationCelsius = InsulationCelsius,
            Count = run.Conductor.Count,
        },
        Fuse = Fuse?.Wish ?? run.Fuse,
        FarFuse = FarFuse?.Wish ?? run.FarFuse,
    };
}

/// <summary>What of a fuse counts in a build.</summary>
/// <param name="RatingAmps">Its rating.</param>
/// <param name="Family">Its family, where one is stated.</param>
/// <param name="LargestConductor">What its holder accepts, where that is stated.</param>
internal readonly record struct FuseFitting(double? RatingAmps, FuseFamilyName? Family, ConductorSize? LargestConductor)
{
    public FuseWish Wish => new() { RatingAmps = RatingAmps, Family = Family, LargestConductor = LargestConductor };

    public static FuseFitting? Of(KitPart? part) =>
        part is null ? null : new FuseFitting(part.RatingAmps, part.Family, part.LargestConductor);
}
