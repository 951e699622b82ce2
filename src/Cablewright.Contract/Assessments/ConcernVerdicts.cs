using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>A verdict for each concern.</summary>
public sealed record ConcernVerdicts
{
    /// <summary>Fire, shock, protection: may it be built.</summary>
    public required Verdict Safety { get; init; }

    /// <summary>Voltage and output lost on the way: will it play as it should.</summary>
    public required Verdict Performance { get; init; }

    /// <summary>
    /// Charging, batteries, playing time, as far as they are stated; what is not stated is not judged and is no caution.
    /// </summary>
    public required Verdict Supply { get; init; }
}
