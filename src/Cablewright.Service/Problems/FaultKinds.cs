namespace Cablewright.Service.Problems;

/// <summary>One kind of fault in a request.</summary>
/// <param name="Code">Its stable code.</param>
/// <param name="Meaning">What it says.</param>
internal sealed record FaultKind(string Code, string Meaning);

/// <summary>Every code that a problem's <c>errors</c> can carry.</summary>
internal static class FaultKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FaultKind> All { get; } = [];
}
