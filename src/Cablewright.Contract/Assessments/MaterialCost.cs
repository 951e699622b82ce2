using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>What the list of materials costs, as far as the build's prices go.</summary>
public sealed record MaterialCost
{
    /// <summary>The sum of the lines that have a price.</summary>
    [Figure("see currency", 25.2838)]
    public required double Price { get; init; }

    /// <summary>The currency of the prices, where the build names one.</summary>
    [Example("EUR")]
    public string? Currency { get; init; }

    /// <summary>How many lines have no price and are not in the sum.</summary>
    [Figure("1", 3)]
    public required int UnpricedLines { get; init; }
}
