namespace Cablewright.Engine.Conductors;

/// <summary>A size that was read, or the reason why the text is none.</summary>
/// <param name="Size">The size, or <c>null</c>.</param>
/// <param name="Problem">What is wrong, or <c>null</c>.</param>
/// <param name="IsLabel">
/// Whether it is a gauge that does not say which: AWG, or a smaller size by the same number, as labels of cable do.
/// </param>
public readonly record struct SizeReading(ConductorSize? Size, SizeProblem? Problem, bool IsLabel = false);

/// <summary>Why a text is no size.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Text">The text; of an area its number alone.</param>
/// <param name="Nearest">The standard sizes that come nearest to an area that is none.</param>
public sealed record SizeProblem(SizeProblemKind Kind, string Text, IReadOnlyList<ConductorSize> Nearest);

/// <summary>What can be wrong with a text that should be a size.</summary>
public enum SizeProblemKind
{
    /// <summary>Nothing, or too much.</summary>
    Expected,

    /// <summary>A number without a unit.</summary>
    NoUnit,

    /// <summary>Nothing that looks like a size.</summary>
    NoSize,

    /// <summary>A gauge smaller or larger than those known.</summary>
    OutsideGauges,

    /// <summary>An area in which no cable is made.</summary>
    NotStandard,
}
