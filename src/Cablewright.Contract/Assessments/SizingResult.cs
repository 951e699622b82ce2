using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>How the choice of what was left open was made.</summary>
public sealed record SizingResult
{
    /// <summary>Every open conductor is as small as the rules let it be; <c>false</c>: the work budget ended first.</summary>
    [Example(true)]
    public required bool Complete { get; init; }

    /// <summary>Metal of all conductors of the build, in grams.</summary>
    [Figure("g", 3120)]
    public required double MassGrams { get; init; }
}
