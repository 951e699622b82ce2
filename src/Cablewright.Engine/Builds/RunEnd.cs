namespace Cablewright.Engine.Builds;

/// <summary>One of the two ends of a run, where a fuse may stand.</summary>
/// <param name="Run">The run's place in the build.</param>
/// <param name="IsFar">Whether it is the end that the run leads to rather than the one that it comes from.</param>
internal readonly record struct RunEnd(int Run, bool IsFar)
{
    /// <summary>The other end of the run.</summary>
    public RunEnd Other => this with { IsFar = !IsFar };

    /// <summary>Its place in a list of all ends.</summary>
    public int Index => 2 * Run + (IsFar ? 1 : 0);

    /// <summary>The end that a run comes from.</summary>
    public static RunEnd Near(int run) => new(run, false);

    /// <summary>The end that a run leads to.</summary>
    public static RunEnd Far(int run) => new(run, true);

    /// <summary>Both ends of a run, the near one first.</summary>
    public static RunEnd[] Of(int run) => [Near(run), Far(run)];

    /// <summary>Names it; the text of a record would name the other end too, and that this one again.</summary>
    public override string ToString() => $"{(IsFar ? "far" : "near")} end of run {Run}";
}
