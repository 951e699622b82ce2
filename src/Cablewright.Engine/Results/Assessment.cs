using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>The answer to one build under one ruleset. Numbers are SI and unrounded.</summary>
public sealed record Assessment
{
    /// <summary>The worst severity among the findings.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Two or three plain sentences that can be read out.</summary>
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    public required string Ruleset { get; init; }

    /// <summary>Everything that was not stated and was therefore assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What to ask next, the question that could change the most first.</summary>
    public required IReadOnlyList<Question> AskNext { get; init; }

    /// <summary>The supply as a whole.</summary>
    public required SupplyResult Supply { get; init; }

    /// <summary>Each amplifier, in the order of the build.</summary>
    public required IReadOnlyList<AmplifierResult> Amplifiers { get; init; }

    /// <summary>Each run in the order of the build, then the runs that were added.</summary>
    public required IReadOnlyList<RunResult> Runs { get; init; }

    /// <summary>What was found, the worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>How the choice was made; <c>null</c> where nothing was left open.</summary>
    public SizingResult? Sizing { get; init; }

    /// <summary>What would make the build feasible; <c>null</c> where no rule fails.</summary>
    public FeasibilityResult? Feasibility { get; init; }

    /// <summary>By how much all amplifiers could be larger, where the build asks.</summary>
    public HeadroomResult? Headroom { get; init; }

    /// <summary>What becomes of the verdict when things are a little off, where the build asks.</summary>
    public RobustnessResult? Robustness { get; init; }

    /// <summary>What was left out, wholly or in part, because the work budget ended first.</summary>
    public IReadOnlyList<AnswerPart> LeftOut { get; init; } = [];

    /// <summary>What the job needs.</summary>
    public required IReadOnlyList<MaterialLine> Materials { get; init; }

    /// <summary>What that costs as far as prices are stated; <c>null</c> where none is.</summary>
    public MaterialCost? MaterialCost { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}

/// <summary>A question for the person who wants the build.</summary>
/// <param name="Pointer">The JSON pointer of the answer's place.</param>
/// <param name="Text">The question.</param>
/// <param name="Why">What the answer could change.</param>
public sealed record Question(string Pointer, string Text, string Why);

/// <summary>One amplifier.</summary>
/// <param name="Id">Its id.</param>
/// <param name="PeakCurrentAmps">Input current at full rated output, engine running.</param>
/// <param name="ThermalCurrentAmps">The root-mean-square current that heats its wiring, the worst of the operating cases.</param>
/// <param name="TerminalVolts">Voltage at its terminals at full rated output, engine running.</param>
/// <param name="DropVolts">Charging voltage less terminal voltage.</param>
/// <param name="DropPercent">The same in percent of the charging voltage.</param>
/// <param name="LostInWireWatts">What the wiring takes of the power sent to it at full rated output.</param>
/// <param name="OutputShortfallWatts">Rated output less what its terminals' voltage lets it give; 0 where it is
/// regulated.</param>
public sealed record AmplifierResult(
    string Id,
    double PeakCurrentAmps,
    double ThermalCurrentAmps,
    double TerminalVolts,
    double DropVolts,
    double DropPercent,
    double LostInWireWatts,
    double OutputShortfallWatts);

/// <summary>One run.</summary>
public sealed record RunResult
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Supply or return.</summary>
    public required Side Side { get; init; }

    /// <summary>Where it starts.</summary>
    public required string From { get; init; }

    /// <summary>Where it ends.</summary>
    public required string To { get; init; }

    /// <summary>Its length in metres.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Where it lies.</summary>
    public required Route Route { get; init; }

    /// <summary>Its conductor.</summary>
    public required ConductorResult Conductor { get; init; }

    /// <summary>Largest current with every amplifier at full rated output, engine running.</summary>
    public required double PeakCurrentAmps { get; init; }

    /// <summary>The root-mean-square current that heats it, the worst of the operating cases.</summary>
    public required double ThermalCurrentAmps { get; init; }

    /// <summary>Resistance of conductors, joints and fuse at working temperature, in milliohms.</summary>
    public required double ResistanceMilliohms { get; init; }

    /// <summary>Resistance times peak current.</summary>
    public required double DropVolts { get; init; }

    /// <summary>Resistance times peak current squared.</summary>
    public required double LossWatts { get; init; }

    /// <summary>Conductor temperature under the thermal current, by the heat balance.</summary>
    public required double TemperatureCelsius { get; init; }

    /// <summary>The current it may carry continuously: the figure the verdict rests on.</summary>
    public required double AmpacityAmps { get; init; }

    /// <summary>The published table with its corrections; <c>null</c> where the table does not reach.</summary>
    public required double? AmpacityTableAmps { get; init; }

    /// <summary>The current that holds the conductor at its insulation's rating by the heat balance.</summary>
    public required double AmpacityHeatBalanceAmps { get; init; }

    /// <summary>Thermal current over ampacity; <c>null</c> where the surroundings leave no ampacity.</summary>
    public required double? Utilisation { get; init; }

    /// <summary>The ids of the runs whose fuses protect it; empty for a return run or an unprotected one.</summary>
    public required IReadOnlyList<string> ProtectedBy { get; init; }

    /// <summary>The fuse at its start.</summary>
    public FuseResult? Fuse { get; init; }

    /// <summary>The fuse at its end.</summary>
    public FuseResult? FarFuse { get; init; }

    /// <summary>The fuse at one of its ends.</summary>
    internal FuseResult? FuseAt(RunEnd end) => end.IsFar ? FarFuse : Fuse;

    /// <summary>What parts two batteries on it.</summary>
    public IsolatorResult? Isolator { get; init; }

    /// <summary>The same run with other conductors, where the build asks and the work budget reached it.</summary>
    public IReadOnlyList<AlternativeResult>? Alternatives { get; init; }
}

/// <summary>An isolator.</summary>
/// <param name="Kind">How it parts the batteries.</param>
/// <param name="RatedAmps">What it is rated for; <c>null</c> where that is not stated.</param>
/// <param name="ThroughAmps">The continuous current through it, or what a charger puts out, the worst of the operating
/// cases.</param>
/// <param name="LossVolts">What it takes of the voltage at that current; 0 for a charger, which makes its own.</param>
public sealed record IsolatorResult(IsolatorKind Kind, double? RatedAmps, double ThroughAmps, double LossVolts);

/// <summary>The conductor of a run.</summary>
/// <param name="Decided">Given or chosen.</param>
/// <param name="Size">Its size.</param>
/// <param name="Material">Its metal.</param>
/// <param name="Count">How many lie in parallel.</param>
/// <param name="InsulationCelsius">Temperature rating of the insulation.</param>
/// <param name="MassGrams">Mass of the metal of all conductors of the run.</param>
public sealed record ConductorResult(
    Decided Decided, ConductorSize Size, Material Material, int Count, double InsulationCelsius, double MassGrams);

/// <summary>A fuse.</summary>
/// <param name="Decided">Given or chosen.</param>
/// <param name="RatingAmps">Rated current.</param>
/// <param name="Family">Family.</param>
/// <param name="DistanceMetres">Conductor between the end of the run and the fuse.</param>
/// <param name="PerConductor">Each conductor of a parallel run has one.</param>
public sealed record FuseResult(
    Decided Decided, double RatingAmps, FuseFamilyName Family, double DistanceMetres, bool PerConductor)
{
    /// <summary>What it and its own terminations take of the voltage at the run's peak current.</summary>
    public double DropVolts { get; init; }

    /// <summary>The heat that it and its own terminations make at that current.</summary>
    public double LossWatts { get; init; }

    /// <summary>The largest short-circuit current where it stands; <c>null</c> on a return.</summary>
    public double? LargestFaultAmps { get; init; }

    /// <summary>The smallest short-circuit current that it must interrupt; <c>null</c> where it protects nothing.</summary>
    public double? SmallestFaultAmps { get; init; }

    /// <summary>The longest time that it may take for that; <c>null</c> where its opening is not certain.</summary>
    public double? ClearingSeconds { get; init; }

    /// <summary>How long the conductor that is nearest to harm withstands it; <c>null</c> where it is never hurt.</summary>
    public double? ConductorWithstandSeconds { get; init; }
}

/// <summary>How the choice was made.</summary>
/// <param name="Complete">The search came to its end; <c>false</c>: the work budget ended first.</param>
/// <param name="MassGrams">Metal of all conductors of the build.</param>
public sealed record SizingResult(bool Complete, double MassGrams)
{
    /// <summary>
    /// It is proven that no other choice which keeps the goal that was reached is better by what was preferred.
    /// </summary>
    public required bool Optimal { get; init; }

    /// <summary>
    /// The most by which a better choice could cost or weigh less, as a share of this one, 0 to 1; 0 where it is optimal,
    /// <c>null</c> where nothing is proven.
    /// </summary>
    public required double? Gap { get; init; }

    /// <summary>
    /// What the chosen conductors cost, in <see cref="Currency"/>; where no prices are stated, in what a kilogram of copper
    /// costs.
    /// </summary>
    public required double Cost { get; init; }

    /// <summary>The currency of the stated prices; <c>null</c> where there are none, or none was named.</summary>
    public string? Currency { get; init; }

    /// <summary>What the whole costs against what it loses, where the build asks.</summary>
    public IReadOnlyList<TradeOffPoint>? Frontier { get; init; }
}

/// <summary>What the list of materials costs, as far as its prices are stated.</summary>
/// <param name="Price">The sum of the lines that have a price.</param>
/// <param name="Currency">The currency of the stated prices; <c>null</c> where none was named.</param>
/// <param name="UnpricedLines">How many lines have no price and are not in the sum.</param>
public sealed record MaterialCost(double Price, string? Currency, int UnpricedLines);

/// <summary>One line of what the job needs.</summary>
/// <param name="Item">What it is, in words of the trade.</param>
/// <param name="Size">Conductor size, where it has one.</param>
/// <param name="Material">Metal, where it has one.</param>
/// <param name="LengthMetres">Total length, where it has one.</param>
/// <param name="RatingAmps">Rating, where it has one.</param>
/// <param name="Family">Fuse family, where it has one.</param>
/// <param name="Count">How many pieces.</param>
public sealed record MaterialLine(
    string Item, ConductorSize? Size, Material? Material, double? LengthMetres, double? RatingAmps, FuseFamilyName? Family,
    int Count)
{
    /// <summary>The length to buy: with the allowance for bends and ends; <c>null</c> where it has no length.</summary>
    public double? CutLengthMetres { get; init; }

    /// <summary>What the length to buy costs by the stated prices; <c>null</c> where none is stated for it.</summary>
    public double? Price { get; init; }

    /// <summary>The currency of the stated prices; <c>null</c> where none was named.</summary>
    public string? Currency { get; init; }
}
