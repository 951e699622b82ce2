using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>How the choice of what was left open was made.</summary>
public sealed record SizingResult
{
    /// <summary>The search came to its end; <c>false</c>: the work budget ended first.</summary>
    [Example(true)]
    public required bool Complete { get; init; }

    /// <summary>It is proven that no other choice that keeps the same goal for the drop, and every rule, is better.</summary>
    [Example(true)]
    public required bool Optimal { get; init; }

    /// <summary>
    /// The most by which the best choice can be better, as a share of this one; 0 where it is optimal, absent where nothing is
    /// proven.
    /// </summary>
    [Figure("1", 0, Largest = 1)]
    public double? Gap { get; init; }

    /// <summary>
    /// What the runs with chosen conductors cost, in the currency of the prices; without prices, in kilograms of copper, by the
    /// ruleset's relative prices. It counts the conductors, a terminal at each end of each, and a fuse with its holder for each
    /// at every end where one that is left open is certain to stand: at batteries and where the build speaks of one. It leaves
    /// out what hangs on other choices: fuses where conductors get smaller, and distribution blocks; <c>materials</c> lists those
    /// too.
    /// </summary>
    [Figure("1", 41.3)]
    public required double Cost { get; init; }

    /// <summary>The currency of the prices; absent where none are stated.</summary>
    [Example("EUR")]
    public string? Currency { get; init; }

    /// <summary>Metal of all conductors of the build, in grams.</summary>
    [Figure("g", 3120)]
    public required double MassGrams { get; init; }

    /// <summary>
    /// What the whole costs against what it loses, the cheapest first, at most 12 points; present where <c>include</c> asks for
    /// alternatives.
    /// </summary>
    public IReadOnlyList<TradeOffPoint>? Frontier { get; init; }
}
