using Cablewright.Contract.Assessments;
using Cablewright.Engine.Results;
using static Cablewright.Service.Assessments.AssessmentMapping;
using Edit = Cablewright.Contract.Assessments.Edit;

namespace Cablewright.Service.Assessments;

/// <summary>From the engine's changes that make a build feasible to the contract's.</summary>
internal static class FeasibilityMapping
{
    /// <summary>What would make a build feasible.</summary>
    public static Feasibility? ToContract(FeasibilityResult? feasibility) => feasibility is null ? null : new Feasibility
    {
        Summary = feasibility.Summary,
        BrokenRules = feasibility.BrokenRules,
        Changes = [.. feasibility.Changes.Select(ChangeOf)],
        Nearest = feasibility.Nearest is { } nearest ? ChangeOf(nearest) : null,
        Complete = feasibility.IsComplete,
    };

    private static Change ChangeOf(ChangeResult change) => new()
    {
        Kind = change.Kind,
        Message = change.Message,
        Runs = change.Runs,
        Amplifiers = change.Amplifiers,
        Edits = [.. change.Edits.Select(edit => new Edit { Pointer = edit.Pointer, From = edit.From, To = edit.To })],
        Share = Shown(change.Share),
        AddedMassGrams = Shown(change.AddedMassGrams),
        Verdict = change.Verdict,
        Remaining = change.Remaining,
    };
}
