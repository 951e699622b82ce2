using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Variations;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Reports;

/// <summary>Adds to an answer what its build asks for beyond one assessment.</summary>
internal static class Extras
{
    /// <summary>The answer with its extras; those that the work budget does not reach are named as left out.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="variant">What it was written from.</param>
    /// <param name="meter">Counts the work.</param>
    public static Assessment Add(Assessment answer, Variant variant, WorkMeter meter)
    {
        IReadOnlyList<Extra> wanted = variant.Build.Stated.Include;
        if (wanted.Count == 0) return answer;
        Ruleset ruleset = variant.Build.Ruleset;
        Build frozen = FrozenBuild.Of(variant.Build, variant.Sized.Evaluation.Design);
        WorkMeter all = meter.Part(WorkBudgets.Variations);
        if (wanted.Contains(Extra.Headroom))
        {
            HeadroomResult? headroom = all.Within(all.Budget, part => HeadroomOf(frozen, ruleset, part));
            answer = Reached(answer with { Headroom = headroom }, headroom is not null, AnswerPart.Headroom);
        }

        if (wanted.Contains(Extra.Robustness))
        {
            RobustnessResult? robustness = all.Within(all.Budget, part => Robustness.Of(variant, frozen, part));
            answer = Reached(answer with { Robustness = robustness }, robustness is not null, AnswerPart.Robustness);
        }

        return wanted.Contains(Extra.Alternatives) ? WithFrontier(WithAlternatives(answer, variant, all), variant, all) : answer;
    }

    private static HeadroomResult HeadroomOf(Build frozen, Ruleset ruleset, WorkMeter meter)
    {
        (double factor, Variant? failing) = Headroom.Of(frozen, ruleset, meter);
        Finding? first = failing is null ? null : new FindingWriter(failing).Write(failing.Worst!.Value);
        return new HeadroomResult(factor, first?.Code, first?.Pointer);
    }

    private static Assessment WithAlternatives(Assessment answer, Variant variant, WorkMeter meter)
    {
        IReadOnlyList<IReadOnlyList<AlternativeResult>?> alternatives = Alternatives.Of(variant, meter);
        return Reached(
            answer with { Runs = [.. answer.Runs.Select((run, index) => run with { Alternatives = alternatives[index] })] },
            alternatives.All(each => each is not null), AnswerPart.Alternatives);
    }

    private static Assessment WithFrontier(Assessment answer, Variant variant, WorkMeter meter)
    {
        if (answer.Sizing is null) return answer;
        IReadOnlyList<TradeOffPoint>? frontier = meter.Within(meter.Budget, part => TradeOff.Of(variant, part));
        return Reached(
            answer with { Sizing = answer.Sizing with { Frontier = frontier } }, frontier is not null, AnswerPart.Frontier);
    }

    private static Assessment Reached(Assessment answer, bool isReached, AnswerPart part) =>
        isReached ? answer : answer with { LeftOut = [.. answer.LeftOut, part] };
}
