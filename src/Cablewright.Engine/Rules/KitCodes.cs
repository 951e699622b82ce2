namespace Cablewright.Engine.Rules;

/// <summary>Every kind of finding that the check of a kit can carry.</summary>
public static class KitCodes
{
    internal const string PartMissing = "kit.part-missing";
    internal const string PartShort = "kit.part-short";
    internal const string CutTight = "kit.cut-tight";
    internal const string WireThin = "kit.wire-thin";
    internal const string WireMarginal = "kit.wire-marginal";
    internal const string FuseWrong = "kit.fuse-wrong";
    internal const string WireBelowLabel = "kit.wire-below-label";
    internal const string SameColour = "kit.same-colour";
    internal const string SundriesMissing = "kit.sundries-missing";
    internal const string BuildFails = "kit.build-fails-anyway";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
    [
        new(BuildFails, "The build fails with any cable and fuse, so no kit serves it as it is."),
        new(CutTight, "A cable of the kit reaches, but without the allowance for bends and ends."),
        new(FuseWrong, "With the kit's fuses the build fails."),
        new(PartMissing, "The kit lacks a part that the job needs, or enough pieces of it."),
        new(PartShort, "A part of the kit is shorter than the job needs."),
        new(SameColour, "The kit's supply and ground cables have the same colour."),
        new(SundriesMissing, "The kit has no heat-shrink or no ties."),
        new(WireBelowLabel, "By its strands a cable of the kit holds less metal than its label says."),
        new(WireMarginal, "With the kit's cables the build is within its limits, and wants a look."),
        new(WireThin, "With the kit's cable the build fails."),
    ];
}
