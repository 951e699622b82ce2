using Cablewright.Contract.Assessments;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Kits;

/// <summary>What one of a shop's kits is to a build.</summary>
public sealed record KitMatch
{
    /// <summary>The shop's number for it.</summary>
    [Example("AK-150")]
    public required string Sku { get; init; }

    /// <summary>What it is called.</summary>
    [Example("Amplifier wiring kit, 1/0 AWG copper")]
    public required string Name { get; init; }

    /// <summary>What it costs, in <c>currency</c>.</summary>
    [Figure("see currency", 149.5, Smallest = 0, Largest = ContractLimits.HighestPrice)]
    public double? Price { get; init; }

    /// <summary>The currency of its price.</summary>
    [Example("EUR")]
    public string? Currency { get; init; }

    /// <summary>Whether it serves.</summary>
    public required KitVerdict Verdict { get; init; }

    /// <summary>One or two plain sentences that can be read out.</summary>
    [Example("\"Amplifier wiring kit, 1/0 AWG copper\" serves this build.")]
    public required string Summary { get; init; }

    /// <summary>
    /// What it lacks, the worst first; pointers lead into the kit as if it stood in the request. A kit whose cables are too short
    /// is not tried in the build, so that a check of that kit alone may find more.
    /// </summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
