using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>By how much all amplifiers could be larger, the wiring left as it is.</summary>
/// <param name="RatedOutputFactor">The largest factor on all ratings at which no rule fails; 0 where none stands, at most
/// 16.</param>
/// <param name="LimitedBy">The code of the finding that stops it; <c>null</c> where none does up to 16.</param>
/// <param name="At">What that points at.</param>
public sealed record HeadroomResult(double RatedOutputFactor, string? LimitedBy, string? At);

/// <summary>What becomes of the verdict when what was stated or assumed is a little off.</summary>
/// <param name="VerdictAcrossTolerances">The worst verdict over all corners of the tolerances.</param>
/// <param name="TippedBy">The smallest set of tolerances that leads there; <c>null</c> where the verdict stays.</param>
/// <param name="TipsInto">The code of the finding that it leads to.</param>
public sealed record RobustnessResult(Verdict VerdictAcrossTolerances, string? TippedBy, string? TipsInto);

/// <summary>A run with another conductor in it, everything else left as it is.</summary>
/// <param name="Size">The conductor's size.</param>
/// <param name="Material">Its metal.</param>
/// <param name="Count">How many lie in parallel.</param>
/// <param name="DropVolts">The run's own drop at its peak current.</param>
/// <param name="LossWatts">The heat that it makes then.</param>
/// <param name="TemperatureCelsius">Its conductor's temperature.</param>
/// <param name="Utilisation">Thermal current over ampacity; <c>null</c> where the surroundings leave none.</param>
/// <param name="Verdict">The verdict of the whole build.</param>
/// <param name="Cost">What the run's conductors cost, or their relative price; <c>null</c> where prices are stated and this
/// conductor has none.</param>
/// <param name="MassGrams">Mass of the run's metal.</param>
public sealed record AlternativeResult(
    ConductorSize Size, Material Material, int Count, double DropVolts, double LossWatts, double TemperatureCelsius,
    double? Utilisation, Verdict Verdict, double? Cost, double MassGrams);

/// <summary>One choice of the open conductors on the frontier of cost against drop.</summary>
/// <param name="Cost">What the chosen conductors cost, or their relative price.</param>
/// <param name="WorstDropPercent">The largest drop at an amplifier, in percent of its source's voltage.</param>
/// <param name="Choices">The conductor of each open run.</param>
public sealed record TradeOffPoint(double Cost, double WorstDropPercent, IReadOnlyList<TradeOffChoice> Choices);

/// <summary>The conductor of one open run.</summary>
/// <param name="Run">The run's id.</param>
/// <param name="Size">Size.</param>
/// <param name="Material">Metal.</param>
/// <param name="Count">How many lie in parallel.</param>
public sealed record TradeOffChoice(string Run, ConductorSize Size, Material Material, int Count);
