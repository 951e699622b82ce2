namespace Cablewright.Engine.Rules;

/// <summary>Every kind of finding that the audit of a cable can carry.</summary>
public static class AuditCodes
{
    internal const string Undersized = "cable.undersized";
    internal const string MayBeUndersized = "cable.may-be-undersized";
    internal const string OtherMetal = "cable.other-metal";
    internal const string NotCopper = "cable.not-copper";
    internal const string MetalNotTold = "cable.metal-not-told";
    internal const string Contradiction = "cable.measurements-disagree";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
    [
        new(MayBeUndersized, "The measurements are not sharp enough to tell whether the cable holds the claimed size."),
        new(Contradiction, "No metal known here agrees with all measurements: one of them is wrong."),
        new(MetalNotTold, "The measurements do not tell the claimed metal from another."),
        new(NotCopper, "No metal is claimed, and the cable cannot be copper."),
        new(OtherMetal, "The cable cannot be of the claimed metal."),
        new(Undersized, "The cable holds less metal than the claimed size."),
    ];
}
