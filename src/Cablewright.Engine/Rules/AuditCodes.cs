using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>Every kind of finding that the audit of a cable can carry.</summary>
public static class AuditCodes
{
    [Meaning("The measurements are not sharp enough to tell whether the cable holds the claimed size.")]
    internal const string MayBeUndersized = "cable.may-be-undersized";

    [Meaning("No metal known here agrees with all measurements: one of them is wrong.")]
    internal const string Contradiction = "cable.measurements-disagree";

    [Meaning("The measurements do not tell the claimed metal from another.")]
    internal const string MetalNotTold = "cable.metal-not-told";

    [Meaning("No metal is claimed, and the cable cannot be copper.")]
    internal const string NotCopper = "cable.not-copper";

    [Meaning("The cable cannot be of the claimed metal.")]
    internal const string OtherMetal = "cable.other-metal";

    [Meaning("The cable holds less metal than the claimed size.")]
    internal const string Undersized = "cable.undersized";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<CodeMeaning> All { get; } = CodeMeaning.In(typeof(AuditCodes));
}
