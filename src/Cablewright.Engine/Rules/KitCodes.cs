using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>Every kind of finding that the check of a kit can carry.</summary>
public static class KitCodes
{
    [Meaning("The build fails with any cable and fuse, so no kit serves it as it is.")]
    internal const string BuildFails = "kit.build-fails-anyway";

    [Meaning("A cable of the kit reaches, but without the allowance for bends and ends.")]
    internal const string CutTight = "kit.cut-tight";

    [Meaning("With the kit's fuses the build fails.")]
    internal const string FuseWrong = "kit.fuse-wrong";

    [Meaning("The kit lacks a part that the job needs, or enough pieces of it.")]
    internal const string PartMissing = "kit.part-missing";

    [Meaning("A part of the kit is shorter than the job needs.")]
    internal const string PartShort = "kit.part-short";

    [Meaning("The kit's supply and ground cables have the same colour.")]
    internal const string SameColour = "kit.same-colour";

    [Meaning("With the kit's cable the build fails by what is assumed, and passes under conditions that can be stated.")]
    internal const string ServesIf = "kit.serves-if";

    [Meaning("The kit has no heat-shrink or no ties.")]
    internal const string SundriesMissing = "kit.sundries-missing";

    [Meaning("By its strands a cable of the kit holds less metal than its label says.")]
    internal const string WireBelowLabel = "kit.wire-below-label";

    [Meaning("With the kit's cables the build is within its limits, and wants a look.")]
    internal const string WireMarginal = "kit.wire-marginal";

    [Meaning("The kit's cable is larger than a terminal usually accepts: a reducer belongs to it.")]
    internal const string WireThick = "kit.wire-thick";

    [Meaning("With the kit's cable the build fails.")]
    internal const string WireThin = "kit.wire-thin";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<CodeMeaning> All { get; } = CodeMeaning.In(typeof(KitCodes));
}
