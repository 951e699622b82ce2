using Cablewright.Engine.Changes;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Puts what was found in order and into words.</summary>
internal sealed class ChangeWriter(Variant present)
{
    private const int MostOfAKind = 3;

    /// <summary>Adds to the answer to a failing build what would make it feasible.</summary>
    public Assessment AddTo(Assessment answer, FoundChanges found)
    {
        FeasibilityResult feasibility = Write(found);
        string smallest = feasibility.Changes.Count == 0
            ? ""
            : $" The smallest change that cures it: {feasibility.Changes[0].Message}";
        return answer with { Feasibility = feasibility, Summary = answer.Summary + smallest };
    }

    private FeasibilityResult Write(FoundChanges found)
    {
        ChangeResult[] changes = [.. SmallestFirst(
            SmallestFirst(found.Curing).GroupBy(each => each.Change.Kind).SelectMany(kind => kind.Take(MostOfAKind)))
            .Select(each => ResultOf(each.Change, each.After))];
        (ChangeResult Change, int Fails)? best = changes.Length == 0 && found.Nearest is { } known && known.Change.Edits.Count > 0
            ? (ResultOf(known.Change, known.After), CodesOf(known.After, Severity.Fail).Count())
            : null;
        string[] broken = [.. CodesOf(present, Severity.Fail)];
        return new FeasibilityResult(
            found.IsComplete, Summary(broken.Length, changes, best, found.IsComplete), broken, changes, best?.Change);
    }

    private static IOrderedEnumerable<(Change Change, Variant After)> SmallestFirst(
        IEnumerable<(Change Change, Variant After)> found) => found
        .OrderBy(each => each.Change.Parts).ThenBy(each => Significant.Round(each.Change.Share)).ThenBy(each => each.Change.Kind);

    private static string Summary(int broken, ChangeResult[] changes, (ChangeResult Change, int Fails)? best, bool isComplete)
    {
        string cannot = $"As it is stated, {Rules(broken)} cannot be kept; the findings say by how much.";
        if (changes.Length > 0) return $"{cannot} The smallest change after which no rule fails: {changes[0].Message}";
        string none = isComplete
            ? "No change was found after which no rule fails"
            : "The work budget ended before a change was found";
        return best is not var (change, fails) ? $"{cannot} {none}."
            : $"{cannot} {none}; nearest comes this, after which {Rules(fails)} still cannot: {change.Message}";
    }

    private static string Rules(int count) => count == 1 ? "1 rule" : $"{count} rules";

    private ChangeResult ResultOf(Change change, Variant after) => new(
        change.Kind, change.Runs, change.Amplifiers, change.Edits,
        char.ToUpperInvariant(change.Words[0]) + change.Words[1..] + ".",
        change.Share, after.ConductorGrams - present.ConductorGrams, after.Verdict,
        [.. CodesOf(after, Severity.Caution)]);

    private static IEnumerable<string> CodesOf(Variant variant, Severity least) =>
        variant.Violations.Where(violation => violation.Severity >= least).OrderByDescending(violation => violation.Severity)
            .ThenBy(violation => violation.Kind).Select(violation => RuleBook.Of(violation.Kind).Finding.Code).Distinct();
}
