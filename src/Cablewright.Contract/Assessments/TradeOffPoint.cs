using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>One choice of the open conductors: no other that was found is both cheaper and loses less.</summary>
public sealed record TradeOffPoint
{
    /// <summary>What the runs with chosen conductors cost, as <c>sizing.cost</c>.</summary>
    [Figure("1", 41.3)]
    public required double Cost { get; init; }

    /// <summary>The largest drop at an amplifier, in percent of its source's voltage.</summary>
    [Figure("%", 2.8)]
    public required double WorstDropPercent { get; init; }

    /// <summary>The conductor of each open run.</summary>
    public required IReadOnlyList<TradeOffChoice> Choices { get; init; }
}

/// <summary>The conductor of one open run.</summary>
public sealed record TradeOffChoice
{
    /// <summary>The run's id.</summary>
    [Example("main")]
    public required string Run { get; init; }

    /// <summary>Size.</summary>
    [Example("1/0 AWG")]
    public required string Size { get; init; }

    /// <summary>Metal.</summary>
    public required Material Material { get; init; }

    /// <summary>How many lie in parallel.</summary>
    [Figure("1", 1)]
    public required int Count { get; init; }
}
