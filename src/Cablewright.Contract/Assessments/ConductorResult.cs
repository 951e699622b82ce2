using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>The conductor of a run.</summary>
public sealed record ConductorResult
{
    /// <summary>Given by the build or chosen by the assessment.</summary>
    public required Decided Decided { get; init; }

    /// <summary>Its size.</summary>
    [Example("1/0 AWG")]
    public required string Size { get; init; }

    /// <summary>The metal of one conductor that is certain to be there, in mm².</summary>
    [Figure("mm2", 53.4751)]
    public required double AreaMm2 { get; init; }

    /// <summary>Its metal.</summary>
    public required Material Material { get; init; }

    /// <summary>How many lie in parallel.</summary>
    [Figure("1", 1, Smallest = 1, Largest = ContractLimits.ParallelConductors)]
    public required int Count { get; init; }

    /// <summary>Temperature rating of the insulation, in degrees Celsius.</summary>
    [Figure("C", 105, Smallest = 60, Largest = 125)]
    public required double InsulationCelsius { get; init; }

    /// <summary>Mass of the metal of all conductors of the run, in grams.</summary>
    [Figure("g", 2365)]
    public required double MassGrams { get; init; }
}
