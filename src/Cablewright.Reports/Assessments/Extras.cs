using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Variations;
using Cablewright.Reports.Findings;
using Cablewright.Vocabulary;
using Alternative = Cablewright.Contract.Assessments.Alternative;
using Build = Cablewright.Engine.Builds.Build;
using Headroom = Cablewright.Contract.Assessments.Headroom;
using Robustness = Cablewright.Contract.Assessments.Robustness;
using TradeOffPoint = Cablewright.Contract.Assessments.TradeOffPoint;

namespace Cablewright.Reports.Assessments;

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
            Headroom? headroom = all.Within(all.Budget, part => HeadroomOf(frozen, ruleset, part));
            answer = Reached(answer with { Headroom = headroom }, headroom is not null, AnswerPart.Headroom);
        }

        if (wanted.Contains(Extra.Robustness))
        {
            Robustness? robustness = all.Within(all.Budget, part => RobustnessOf(variant, frozen, part));
            answer = Reached(answer with { Robustness = robustness }, robustness is not null, AnswerPart.Robustness);
        }

        return wanted.Contains(Extra.Alternatives) ? WithFrontier(WithAlternatives(answer, variant, all), variant, all) : answer;
    }

    private static Headroom HeadroomOf(Build frozen, Ruleset ruleset, WorkMeter meter)
    {
        (double factor, Variant? failing) = Engine.Variations.Headroom.Of(frozen, ruleset, meter);
        Finding? first = failing is null ? null : new FindingWriter(failing).Write(failing.Worst!.Value);
        return new Headroom { RatedOutputFactor = factor, LimitedBy = first?.Code, At = first?.Pointer };
    }

    private static Robustness RobustnessOf(Variant variant, Build frozen, WorkMeter meter)
    {
        RobustnessFound found = Engine.Variations.Robustness.Of(variant, frozen, meter);
        return new Robustness
        {
            VerdictAcrossTolerances = found.Worst,
            TippedBy = found.TippedBy.Count == 0 ? null : new ToleranceWording(variant.Build).Of(found.TippedBy),
            TipsInto = found.TipsInto is { } kind ? RuleBook.Of(kind).Finding.Code : null,
        };
    }

    private static Assessment WithAlternatives(Assessment answer, Variant variant, WorkMeter meter)
    {
        IReadOnlyList<IReadOnlyList<Alternative>?> found = Alternatives.Of(variant, meter, AlternativeOf);
        return Reached(
            answer with
            {
                Runs = [.. answer.Runs.Select((run, index) => run with { Alternatives = found[index] })],
            },
            found.All(each => each is not null), AnswerPart.Alternatives);
    }

    private static Alternative AlternativeOf(int run, Engine.Variations.Alternative other)
    {
        DesignEvaluation evaluation = other.Variant.Sized.Evaluation;
        double amps = evaluation.Envelope.PeakAmps[run], ohms = evaluation.Envelope.Ohms[run];
        double ampacity = other.Variant.Evaluator.Model.Ampacities.OfAll(run, other.Choice);
        return new Alternative
        {
            Conductor = new AlternativeConductor
            {
                Size = other.Choice.Conductor.Size.Label,
                Material = other.Choice.Conductor.Material,
                Count = other.Choice.Count,
            },
            DropVolts = ohms * amps,
            LossWatts = ohms * amps * amps,
            TemperatureCelsius = evaluation.Envelope.Celsius[run],
            Utilisation = ampacity > 0 ? evaluation.Envelope.ThermalAmps[run] / ampacity : null,
            Verdict = other.Variant.Verdict,
            Cost = other.Cost,
            MassGrams = other.Choice.KilogramsPerMetre * other.Variant.Build.Runs[run].LengthMetres * 1000,
        };
    }

    private static Assessment WithFrontier(Assessment answer, Variant variant, WorkMeter meter)
    {
        if (answer.Sizing is null) return answer;
        IReadOnlyList<Engine.Variations.TradeOffPoint>? frontier =
            meter.Within(meter.Budget, part => TradeOff.Of(variant, part));
        TradeOffPoint[]? points = frontier is null ? null : [.. frontier.Select(PointOf)];
        return Reached(
            answer with { Sizing = answer.Sizing with { Frontier = points } }, frontier is not null, AnswerPart.Frontier);
    }

    private static TradeOffPoint PointOf(Engine.Variations.TradeOffPoint point) => new()
    {
        Cost = point.Cost,
        WorstDropPercent = point.WorstDropPercent,
        Choices = [.. point.Variant.Runs.Where(run => run.Run.Given is null).Select(run => ChoiceOf(run.Id, run.Choice))],
    };

    private static TradeOffChoice ChoiceOf(string run, ConductorChoice choice) => new()
    {
        Run = run,
        Size = choice.Conductor.Size.Label,
        Material = choice.Conductor.Material,
        Count = choice.Count,
    };

    private static Assessment Reached(Assessment answer, bool isReached, AnswerPart part) =>
        isReached ? answer : answer with { LeftOut = [.. answer.LeftOut ?? [], part] };
}
