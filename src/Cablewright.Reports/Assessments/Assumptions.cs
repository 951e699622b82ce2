using Cablewright.Contract.Assessments;

namespace Cablewright.Reports.Assessments;

/// <summary>Writes what was assumed.</summary>
internal static class Assumptions
{
    /// <summary>Every value that was not stated, in the order of the build.</summary>
    public static IReadOnlyList<Assumption> Of(IReadOnlyList<Engine.Completion.Assumption> noted) =>
        [.. noted.Select(assumption => new Assumption
        {
            Pointer = assumption.Pointer,
            Value = assumption.Value,
            Reason = assumption.Reason,
            Source = assumption.Source,
        })];
}
