using Cablewright.Contract.Builds;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>The answer to one build under one ruleset.</summary>
public sealed record Assessment
{
    /// <summary>
    /// Identifies build, ruleset, engine version and units: <c>asm_</c> and the SHA-256 of their canonical form in lower-case
    /// hexadecimal. The same question has the same id everywhere.
    /// </summary>
    [Example("asm_6b51d431df5d7f141cbececcf79edf3dd861c3b4069f0b11661a3eefacbba918", Pattern = "^asm_[0-9a-f]{64}$")]
    public required string Id { get; init; }

    /// <summary>The worst severity among the findings: <c>pass</c>, <c>caution</c> or <c>fail</c>.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The verdict of each concern; <c>verdict</c> is the worst of them.</summary>
    public required ConcernVerdicts Verdicts { get; init; }

    /// <summary>Two or three plain sentences that can be read out, in the units of the build.</summary>
    [Example("The wiring passes. The front amplifier loses 0.3 V of 13.8 V.")]
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    [Example("2026.2")]
    public required string Ruleset { get; init; }

    /// <summary>The version of the computation.</summary>
    [Example("1.0.0")]
    public required string EngineVersion { get; init; }

    /// <summary>Everything that was not stated and was therefore assumed.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>
    /// What to ask next, the question whose answer could change the most first: values that were assumed, and the alternator's
    /// rating, which is not assumed, where an expected one would show that the supply falls short.
    /// </summary>
    public required IReadOnlyList<FollowUp> AskNext { get; init; }

    /// <summary>The supply as a whole.</summary>
    public required Supply Supply { get; init; }

    /// <summary>Each amplifier, in the order of the build.</summary>
    public required IReadOnlyList<AmplifierResult> Amplifiers { get; init; }

    /// <summary>Each run in the order of the build, then the runs that were added.</summary>
    public required IReadOnlyList<RunResult> Runs { get; init; }

    /// <summary>What was found, the worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>How the choice was made; absent where nothing was left open.</summary>
    public SizingResult? Sizing { get; init; }

    /// <summary>What would make the build feasible; present where a rule fails.</summary>
    public Feasibility? Feasibility { get; init; }

    /// <summary>By how much all amplifiers could be larger; present where <c>include</c> asks.</summary>
    public Headroom? Headroom { get; init; }

    /// <summary>What becomes of the verdict when things are a little off; present where <c>include</c> asks.</summary>
    public Robustness? Robustness { get; init; }

    /// <summary>
    /// Parts of the answer that are missing or short because the computation reached its work limit first; absent where nothing
    /// is. The limit is counted, not timed: the same build leaves out the same parts everywhere. What is there holds all the
    /// same.
    /// </summary>
    public IReadOnlyList<AnswerPart>? LeftOut { get; init; }

    /// <summary>What the job needs.</summary>
    public required IReadOnlyList<MaterialLine> Materials { get; init; }

    /// <summary>What that costs, the allowance for bends and ends included; present where the build states prices.</summary>
    public MaterialCost? MaterialCost { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }

    /// <summary>The full build that was assessed, ready to edit and post; present only in answers of the quick call.</summary>
    public Build? Build { get; init; }
}
