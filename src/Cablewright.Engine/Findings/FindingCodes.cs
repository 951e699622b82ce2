namespace Cablewright.Engine.Findings;

/// <summary>One kind of finding.</summary>
/// <param name="Code">Its stable code.</param>
/// <param name="Meaning">What it says.</param>
public sealed record FindingCode(string Code, string Meaning);

/// <summary>Every kind of finding that an answer can carry.</summary>
public static class FindingCodes
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingCode> All { get; } = [];
}
