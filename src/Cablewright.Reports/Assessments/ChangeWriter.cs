using System.Globalization;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Contract.Assessments;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using Change = Cablewright.Contract.Assessments.Change;
using Edit = Cablewright.Contract.Assessments.Edit;

namespace Cablewright.Reports.Assessments;

/// <summary>Puts what was found in order and into words.</summary>
internal sealed class ChangeWriter(Variant present)
{
    private const int MostOfAKind = 3;

    /// <summary>Whoever has to change more parts than this had better begin anew.</summary>
    private const int MostOfADesign = 2;

    /// <summary>What a shop would try first: the fuse, its place, the cable, the way; the load last, and as advice.</summary>
    private static readonly ChangeKind[] ShopOrder =
    [
        ChangeKind.Fuse, ChangeKind.FuseDistance, ChangeKind.Isolator, ChangeKind.Battery, ChangeKind.Conductor,
        ChangeKind.Material, ChangeKind.Choice, ChangeKind.Combination, ChangeKind.Insulation, ChangeKind.Length,
        ChangeKind.Parallel, ChangeKind.Power,
    ];

    private readonly StepWording steps = new(present.Build.Speech);
    private readonly Speech speech = present.Build.Speech;

    /// <summary>Adds to the answer to a failing build what would make it feasible.</summary>
    public Assessment AddTo(Assessment answer, FoundChanges found)
    {
        Feasibility feasibility = Write(found);
        return answer with
        {
            Feasibility = feasibility,
            Summary = feasibility.Changes is [var smallest, ..]
                ? $"{answer.Summary} {speech.Text("summary.cures", new Params { ["change"] = smallest.Message })}"
                : answer.Summary,
        };
    }

    private Feasibility Write(FoundChanges found)
    {
        bool isOneEnough = found.Curing.Any(each => each.Change.Parts == 1 && each.After.Verdict is Verdict.Pass);
        Change[] changes = [.. BestFirst(
            BestFirst(found.Curing).Where(each => !isOneEnough || each.Change.Kind is not ChangeKind.Combination)
                .GroupBy(each => each.Change.Kind).SelectMany(kind => kind.Take(MostOfAKind)))
            .Select(each => ResultOf(each.Change, each.After))];
        (Change Change, int Fails)? best = changes.Length == 0 && found.Nearest is { } known && known.Change.Edits.Count > 0
            ? (ResultOf(known.Change, known.After), CodesOf(known.After, Severity.Fail).Count())
            : null;
        string[] broken = [.. CodesOf(present, Severity.Fail)];
        return new Feasibility
        {
            Summary = Summary(broken.Length, changes, best, found.IsComplete),
            BrokenRules = broken,
            Changes = changes,
            Nearest = best?.Change,
            Complete = found.IsComplete,
        };
    }

    /// <summary>Those that leave nothing to settle first, in the order of a shop.</summary>
    private static IOrderedEnumerable<(Engine.Changes.Change Change, Variant After)> BestFirst(
        IEnumerable<(Engine.Changes.Change Change, Variant After)> found) => found
        .OrderBy(each => each.After.Verdict)
        .ThenBy(each => Array.IndexOf(ShopOrder, each.Change.Kind))
        .ThenBy(each => each.Change.Parts)
        .ThenBy(each => Significant.Round(each.Change.Share));

    private string Summary(int broken, Change[] changes, (Change Change, int Fails)? best, bool isComplete)
    {
        string cannot = Counted("feasibility.broken", broken, []);
        if (changes is [var first, ..])
            return $"{cannot} {speech.Text("feasibility.first", new Params { ["change"] = first.Message })}";
        string none = isComplete ? "feasibility.none" : "feasibility.unfinished";
        return best is not var (change, fails) ? $"{cannot} {speech.Text(none, [])}"
            : $"{cannot} {Counted(none + ".nearest", fails, new Params { ["change"] = change.Message })}";
    }

    private string Counted(string key, int rules, Params others) =>
        speech.Text(rules == 1 ? key + ".one" : key, new Params { ["rules"] = rules }.And(others));

    private Change ResultOf(Engine.Changes.Change change, Variant after)
    {
        bool isNewDesign = change.Parts > MostOfADesign && change.Kind is ChangeKind.Combination;
        Message message = steps.Of(change.Steps, isNewDesign);
        return new Change
        {
            Kind = change.Kind,
            Message = message.Text,
            Params = message.Params.OrNone,
            Runs = change.Runs,
            Amplifiers = change.Amplifiers,
            Edits = [.. change.Edits.Select(EditOf)],
            Share = change.Share,
            AddedMassGrams = after.ConductorGrams - present.ConductorGrams,
            Verdict = after.Verdict,
            Remaining = [.. CodesOf(after, Severity.Caution)],
        };
    }

    private static Edit EditOf(Engine.Changes.Edit edit) =>
        new() { Pointer = Pointers.Of(edit.At), From = TextOf(edit.From), To = TextOf(edit.To) };

    /// <summary>What a member holds, as a build writes it.</summary>
    private static string? TextOf(Held? held) => held switch
    {
        null => null,
        Held.Figure figure => WrittenText.Of(figure.Written),
        Held.Word word => Words.Of(word.Value),
        Held.Size size => size.Value.Label,
        Held.Flag flag => flag.IsSo ? "true" : "false",
        Held.Count count => count.Number.ToString(CultureInfo.InvariantCulture),
        _ => throw new ArgumentOutOfRangeException(nameof(held)),
    };

    private static IEnumerable<string> CodesOf(Variant variant, Severity least) => variant.Ranked
        .Where(violation => violation.Severity >= least)
        .Select(violation => RuleBook.Of(violation.Kind).Finding.Code).Distinct();
}
