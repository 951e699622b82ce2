using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>One thing that the assessment found.</summary>
/// <param name="Code">Stable, dotted, <c>subject.problem</c>; all are listed in <c>FindingCodes</c>.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">JSON pointer into the build.</param>
/// <param name="Message">What was found, in the caller's units.</param>
/// <param name="Measured">The figure that was judged, where there is one.</param>
/// <param name="Limit">The figure it was judged against, where there is one.</param>
/// <param name="Unit">The unit of both.</param>
/// <param name="Rule">The id of the rule in the ruleset.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Remedy">What would cure it.</param>
/// <param name="Workings">The formula with the numbers put in.</param>
public sealed record Finding(
    string Code,
    Severity Severity,
    string Pointer,
    string Message,
    double? Measured,
    double? Limit,
    string? Unit,
    string Rule,
    string Source,
    string Remedy,
    string Workings);
