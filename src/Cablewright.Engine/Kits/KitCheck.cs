using Cablewright.Engine.Answers;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Findings;

namespace Cablewright.Engine.Kits;

/// <summary>Whether a kit serves a build.</summary>
public enum KitVerdict
{
    /// <summary>It holds what the job needs.</summary>
    Serves,

    /// <summary>It does once a part is bought beside it or exchanged; its power wire bears the job.</summary>
    ServesWithChange,

    /// <summary>Its power wire is missing, too short or too thin, or the build fails with any kit.</summary>
    DoesNotServe,
}

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
    /// The build with the kit's cables and fuses in it; <c>null</c> where the kit lacks a cable and cannot be tried, or was passed
    /// over before.
    /// </summary>
    public required KitTrial? Trial { get; init; }

    /// <summary>What was assumed of the kit.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
