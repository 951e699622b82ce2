using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>Several builds side by side.</summary>
/// <param name="Builds">What each comes to.</param>
/// <param name="Differences">Where they differ, by what the answers show.</param>
public sealed record ComparisonResult(IReadOnlyList<ComparedBuild> Builds, IReadOnlyList<Difference> Differences);

/// <summary>What one build of a comparison comes to.</summary>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Fails">How many findings fail it.</param>
/// <param name="Cautions">How many ask for caution.</param>
/// <param name="WorstDropPercent">The largest drop at an amplifier, in percent of its source's voltage.</param>
/// <param name="HottestCelsius">The hottest conductor.</param>
/// <param name="LargestUtilisation">The largest thermal current over ampacity; <c>null</c> where no run has an ampacity.</param>
/// <param name="LostInWireWatts">What the wiring takes at full output.</param>
/// <param name="ConductorGrams">The metal of all conductors.</param>
/// <param name="Cost">What the chosen conductors cost; <c>null</c> where nothing was chosen.</param>
/// <param name="EngineOffMinutes">How long the music plays with the engine off, where that is known.</param>
public sealed record ComparedBuild(
    Verdict Verdict, int Fails, int Cautions, double WorstDropPercent, double HottestCelsius, double? LargestUtilisation,
    double LostInWireWatts, double ConductorGrams, double? Cost, double? EngineOffMinutes);

/// <summary>Something in which the builds differ.</summary>
/// <param name="Subject"><c>run</c>, <c>amplifier</c> or <c>finding</c>.</param>
/// <param name="Id">Its id, or the finding's code.</param>
/// <param name="What">The member of the answer that differs.</param>
/// <param name="Values">Its value in each build, in words; <c>null</c> where a build has no such thing.</param>
public sealed record Difference(string Subject, string Id, string What, IReadOnlyList<string?> Values)
{
    /// <summary>Whether the values are not all the same.</summary>
    public bool Differs => Values.Distinct().Skip(1).Any();
}
