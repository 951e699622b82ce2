using Cablewright.Vocabulary;

namespace Cablewright.Engine.Results;

/// <summary>What would make a build that fails feasible: changes after which no rule fails.</summary>
/// <param name="IsComplete">Every kind of change was tried; <c>false</c>: the work budget ended first.</param>
/// <param name="Summary">A sentence or two that can be read out.</param>
/// <param name="BrokenRules">The codes of the findings that fail, the most dangerous first; each finding says by how
/// much.</param>
/// <param name="Changes">
/// Changes after which no rule fails, the smallest first: the one that touches the fewest parts, among equals the one that
/// changes its part by the smallest share. Empty where none was found.
/// </param>
/// <param name="Nearest">Where none was found: the change after which the fewest rules fail; else <c>null</c>.</param>
public sealed record FeasibilityResult(
    bool IsComplete, string Summary, IReadOnlyList<string> BrokenRules, IReadOnlyList<ChangeResult> Changes,
    ChangeResult? Nearest);

/// <summary>A change to a build, and what is left of its findings.</summary>
/// <param name="Kind">What kind of change.</param>
/// <param name="Runs">The ids of the runs that change.</param>
/// <param name="Amplifiers">The ids of the amplifiers that change.</param>
/// <param name="Edits">What to state in the build, member by member.</param>
/// <param name="Message">What to do, in the caller's units.</param>
/// <param name="Share">
/// How far what changes is from what it was, as a share of it, 0 to 1 or more; of several parts the largest. Of a length or a
/// power what is taken away; of a conductor what is taken off its resistance; of a rating its change; 1 where a part is added.
/// </param>
/// <param name="AddedMassGrams">Metal of all conductors of the build after the change, less that before it.</param>
/// <param name="Verdict">The verdict after it.</param>
/// <param name="Remaining">The codes of the findings that then remain, infos left out, the worst first.</param>
public sealed record ChangeResult(
    ChangeKind Kind, IReadOnlyList<string> Runs, IReadOnlyList<string> Amplifiers, IReadOnlyList<Edit> Edits, string Message,
    double Share, double AddedMassGrams, Verdict Verdict, IReadOnlyList<string> Remaining);

/// <summary>One member of a build and what it is to hold.</summary>
/// <param name="Pointer">JSON pointer (RFC 6901); it may end in <c>-</c>, the place after the last item of a list.</param>
/// <param name="From">What it holds; <c>null</c> where it is not stated.</param>
/// <param name="To">What it is to hold; <c>null</c>: leave it out.</param>
public sealed record Edit(string Pointer, string? From, string? To);
