using Cablewright.Contract.Assessments;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Kits;

/// <summary>What a kit is to a build.</summary>
public sealed record KitAnswer
{
    /// <summary>Whether it serves.</summary>
    public required KitVerdict Verdict { get; init; }

    /// <summary>One or two plain sentences that can be read out.</summary>
    [Example("\"Amplifier wiring kit, 4 AWG copper\" serves this build.")]
    public required string Summary { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    [Example("2026.2")]
    public required string Ruleset { get; init; }

    /// <summary>The version of the computation.</summary>
    [Example("1.0.0")]
    public required string EngineVersion { get; init; }

    /// <summary>The state of the shop's catalogue that the kit was taken from, where it was.</summary>
    [Figure("1", 42)]
    public long? Revision { get; init; }

    /// <summary>
    /// What is missing, short, thin or wrongly fused, the worst first; pointers lead into the request, to a shop's kit as if it
    /// stood there.
    /// </summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What the job needs, chosen without regard to the kit.</summary>
    public required IReadOnlyList<MaterialLine> Needs { get; init; }

    /// <summary>
    /// The build with the kit's cables and fuses in it, assessed; absent where the kit lacks a power wire and cannot be tried.
    /// </summary>
    public Assessment? Trial { get; init; }

    /// <summary>What was assumed of the kit; what was assumed of the build stands in <c>trial</c>.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
