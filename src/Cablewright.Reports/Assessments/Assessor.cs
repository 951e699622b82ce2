using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Faults;
using Cablewright.Reports.Questions;
using Cablewright.Vocabulary;
using Build = Cablewright.Engine.Builds.Build;

namespace Cablewright.Reports.Assessments;

/// <summary>From a build to its answer.</summary>
public static class Assessor
{
    /// <summary>Assesses a build.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    public static Assessment Assess(Build build, Ruleset ruleset) => Assess(build, ruleset, WorkBudgets.MeterFor(build));

    /// <summary>The same; with or without what advises.</summary>
    internal static Assessment Assess(Build build, Ruleset ruleset, bool advises) =>
        Assess(build, ruleset, WorkBudgets.MeterFor(build), advises);

    /// <summary>The same, with its work counted.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work, and ends it.</param>
    /// <param name="advises">
    /// Whether the answer holds questions, and what would make a failing build feasible: most of the work, where nobody reads
    /// them.
    /// </param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    /// <exception cref="OperationCanceledException">The meter ended it.</exception>
    /// <exception cref="WorkExceededException">It takes more work than the meter allows, all that is optional left
    /// out.</exception>
    public static Assessment Assess(Build build, Ruleset ruleset, WorkMeter meter, bool advises = true)
    {
        ArgumentNullException.ThrowIfNull(meter);
        BuildFaultWriter.ThrowIfFaulty(build);
        return Answer(Variant.Of(build, ruleset, meter.FairPart(WorkBudgets.Sizing)), meter, advises);
    }

    /// <summary>The answer to a build that was worked out.</summary>
    internal static Assessment Answer(Variant variant, WorkMeter meter, bool advises)
    {
        Asked asked = advises && variant.Sized.Evaluation.SolvableShare >= 1 ? QuestionFinder.For(variant, meter) : Asked.Nothing;
        Assessment answer = new AssessmentWriter(variant).Write(asked.Questions);
        if (advises && answer.Verdict is Verdict.Fail)
            answer = new ChangeWriter(variant).AddTo(answer, ChangeFinder.For(variant, meter));
        if (!asked.IsComplete) answer = answer with { LeftOut = [AnswerPart.AskNext] };
        return Extras.Add(answer, variant, meter);
    }
}
