using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Results;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>A build with a kit's cables and fuses in it.</summary>
/// <param name="Build">The build as it was tried.</param>
/// <param name="Assessment">What came of it.</param>
public sealed record KitTrial(Build Build, Assessment Assessment);

/// <summary>What a kit is to a build.</summary>
public sealed record KitCheck
{
    /// <summary>Whether it serves.</summary>
    public required KitVerdict Verdict { get; init; }

    /// <summary>Two or three plain sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    public required string Ruleset { get; init; }

    /// <summary>What is missing, short, thin or wrongly fused, the worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What the job needs, chosen without regard to the kit.</summary>
    public required IReadOnlyList<MaterialLine> Needs { get; init; }

    /// <summary>
    /// The build with the kit's cables and fuses in it; <c>null</c> where the kit lacks a cable and cannot be tried, or was
    /// passed over before.
    /// </summary>
    public required KitTrial? Trial { get; init; }

    /// <summary>What was assumed of the kit.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
