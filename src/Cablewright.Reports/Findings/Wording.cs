using Cablewright.Reports.Messages;

namespace Cablewright.Reports.Findings;

/// <summary>What a finding says, before its code and source are put to it.</summary>
/// <param name="Pointer">JSON pointer into the build.</param>
/// <param name="Values">The values of which the message is made.</param>
/// <param name="Workings">The formula with the numbers put in; <c>null</c>: a sentence of the catalogue, of the same
/// values.</param>
/// <param name="Unit">Unit of measured figure and limit; <c>null</c> where the finding has no figures.</param>
/// <param name="HasLimit">Whether the limit is a figure.</param>
internal sealed record Wording(
    string Pointer, Params Values, string? Workings = null, string? Unit = null, bool HasLimit = true)
{
    /// <summary>Which of the sentences that the finding's code has, such as <c>.each</c>.</summary>
    public string Variant { get; init; } = "";

    /// <summary>What would cure it; <c>null</c>: the remedy that the catalogue has for the code, of the same values.</summary>
    public string? Remedy { get; init; }
}
