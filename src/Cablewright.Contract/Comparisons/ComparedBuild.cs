using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Comparisons;

/// <summary>What one build of a comparison comes to.</summary>
public sealed record ComparedBuild
{
    /// <summary>The id that its assessment has.</summary>
    [Example("asm_6b51d431df5d7f141cbececcf79edf3dd861c3b4069f0b11661a3eefacbba918", Pattern = "^asm_[0-9a-f]{64}$")]
    public required string Id { get; init; }

    /// <summary>Its name, where it has one.</summary>
    [Example("Estate car, two amplifiers")]
    public string? Name { get; init; }

    /// <summary>Its verdict.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>How many findings fail it.</summary>
    [Figure("1", 0)]
    public required int Fails { get; init; }

    /// <summary>How many ask for caution.</summary>
    [Figure("1", 2)]
    public required int Cautions { get; init; }

    /// <summary>The largest drop at an amplifier, in percent of its source's voltage.</summary>
    [Figure("%", 2.8)]
    public required double WorstDropPercent { get; init; }

    /// <summary>The hottest conductor, in degrees Celsius.</summary>
    [Figure("°C", 71, Smallest = double.NegativeInfinity)]
    public required double HottestCelsius { get; init; }

    /// <summary>The largest thermal current over ampacity; absent where no run has an ampacity.</summary>
    [Figure("1", 0.8)]
    public double? LargestUtilisation { get; init; }

    /// <summary>What the wiring takes at full output, in watts.</summary>
    [Figure("W", 35)]
    public required double LostInWireWatts { get; init; }

    /// <summary>The metal of all conductors, in grams.</summary>
    [Figure("g", 3120)]
    public required double ConductorGrams { get; init; }

    /// <summary>What the chosen conductors cost, as <c>sizing.cost</c>; absent where nothing was chosen.</summary>
    [Figure("1", 41.3)]
    public double? Cost { get; init; }

    /// <summary>How long the music plays with the engine off, in minutes, where that is known.</summary>
    [Figure("min", 95)]
    public double? EngineOffMinutes { get; init; }
}
