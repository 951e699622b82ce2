using Cablewright.Contract.Assessments;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>A shop's kits, held against one build.</summary>
public sealed record KitMatches
{
    /// <summary>The state of the shop's catalogue that was looked through; it grows with every change of a kit.</summary>
    [Figure("1", 42)]
    public required long Revision { get; init; }

    /// <summary>The id of the ruleset that was applied.</summary>
    [Example("2026.2")]
    public required string Ruleset { get; init; }

    /// <summary>The version of the computation.</summary>
    [Example("1.1.0")]
    public required string EngineVersion { get; init; }

    /// <summary>How many kits serve as they are.</summary>
    [Figure("1", 3)]
    public required int Serving { get; init; }

    /// <summary>How many serve once a part is bought beside them or exchanged.</summary>
    [Figure("1", 5)]
    public required int ServingWithChange { get; init; }

    /// <summary>How many do not serve.</summary>
    [Figure("1", 12)]
    public required int NotServing { get; init; }

    /// <summary>
    /// How many were left untried, the dearest, because the build is large and their cables and fuses too many different ones.
    /// </summary>
    [Figure("1", 0)]
    public required int Untried { get; init; }

    /// <summary>
    /// The numbers of kits that were left out because they cannot be read: damaged, or written by a later release. Put them
    /// again.
    /// </summary>
    [Example("AK-9")]
    public required IReadOnlyList<string> Unreadable { get; init; }

    /// <summary>
    /// Those that serve first, then those that serve with a change, then the others; within each the cheapest first, kits in the
    /// build's <c>sizing.currency</c> before those in another, kits without a price last.
    /// </summary>
    public required IReadOnlyList<KitMatch> Kits { get; init; }

    /// <summary>Where the next kits start, for <c>after</c>; absent behind the last.</summary>
    [Example("QUstMTUw")]
    public string? Next { get; init; }

    /// <summary>What the job needs, chosen without regard to any kit.</summary>
    public required IReadOnlyList<MaterialLine> Needs { get; init; }

    /// <summary>The cautions that every answer carries.</summary>
    [Example("Disconnect the battery's negative terminal before any work, and connect it last.")]
    public required IReadOnlyList<string> SafetyNotes { get; init; }
}
