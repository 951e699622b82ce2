using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>A way to change a build.</summary>
internal sealed record Change
{
    public required ChangeKind Kind { get; init; }

    /// <summary>Changes what is stated; runs and amplifiers are known by their place in the build.</summary>
    public required Func<Build, Build> Apply { get; init; }

    /// <summary>What is then stated otherwise.</summary>
    public required IReadOnlyList<Edit> Edits { get; init; }

    /// <summary>What to do, one after another.</summary>
    public required IReadOnlyList<Step> Steps { get; init; }

    /// <summary>How far what changes is from what it was.</summary>
    public required double Share { get; init; }

    /// <summary>How many parts change.</summary>
    public int Parts { get; init; } = 1;

    public IReadOnlyList<string> Runs { get; init; } = [];

    public IReadOnlyList<string> Amplifiers { get; init; } = [];

    /// <summary>Fuses that it leaves open; what is chosen for them is stated once the change is found.</summary>
    public IReadOnlyList<RunEnd> OpenFuses { get; init; } = [];

    /// <summary>A change of which nothing is said, since it only leaves something open or as it was.</summary>
    public static Change Unsaid(Func<Build, Build> apply) =>
        new() { Kind = ChangeKind.Combination, Apply = apply, Edits = [], Steps = [], Share = 0, Parts = 0 };

    /// <summary>This change and another together.</summary>
    public Change And(Change other) => new()
    {
        Kind = other.Parts == 0 || Kind == other.Kind ? Kind : Parts == 0 ? other.Kind : ChangeKind.Combination,
        Apply = build => other.Apply(Apply(build)),
        Edits = [.. Edits, .. other.Edits],
        Steps = [.. Steps, .. other.Steps],
        Share = Math.Max(Share, other.Share),
        Parts = Parts + other.Parts,
        Runs = [.. Runs.Union(other.Runs)],
        Amplifiers = [.. Amplifiers.Union(other.Amplifiers)],
        OpenFuses = [.. OpenFuses, .. other.OpenFuses],
    };
}
