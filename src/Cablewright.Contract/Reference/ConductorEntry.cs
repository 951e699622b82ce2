using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Reference;

/// <summary>One size in one metal.</summary>
public sealed record ConductorEntry
{
    /// <summary>The metal.</summary>
    public required Material Material { get; init; }

    /// <summary>Resistance of one metre at 20 °C, in milliohms.</summary>
    [Figure("mohm/m", 0.78)]
    public required double ResistanceMilliohmsPerMetre { get; init; }

    /// <summary>Mass of the metal of one metre, in grams.</summary>
    [Figure("g/m", 204.4)]
    public required double MassGramsPerMetre { get; init; }
}
