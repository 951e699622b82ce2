using Cablewright.Engine.Builds;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Reports;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine;

/// <summary>The one way in.</summary>
public static class Assessor
{
    /// <summary>The version of the computation; part of every answer's identity.</summary>
    public static string EngineVersion { get; } = typeof(Assessor).Assembly.GetName().Version!.ToString(3);

    /// <summary>The codes of what makes it impossible to say what a build means.</summary>
    public static IReadOnlyList<CodeMeaning> FaultCodes { get; } = CodeMeaning.In(typeof(BuildFaultCodes));

    /// <summary>What makes it impossible to say what the build means; empty for a build that can be assessed.</summary>
    /// <remarks>Only ids, places, sides and which kinds of figures are stated matter here, never their values.</remarks>
    public static IReadOnlyList<BuildFault> FindFaults(Build build) => FaultFinder.Find(build);

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
        return Assess(build, ruleset, meter, advises, out _);
    }

    /// <summary>The same, with what the answer was written from.</summary>
    internal static Assessment Assess(Build build, Ruleset ruleset, WorkMeter meter, bool advises, out Variant variant)
    {
        if (FindFaults(build) is { Count: > 0 } faults) throw new ArgumentException(faults[0].Detail, nameof(build));
        variant = Variant.Of(build, ruleset, meter.FairPart(WorkBudgets.Sizing));
        Asked asked = advises && variant.Sized.Evaluation.SolvableShare >= 1 ? Questions.For(variant, meter) : Asked.Nothing;
        Assessment answer = new AssessmentWriter(variant).Write(asked.Questions);
        if (advises && answer.Verdict is Verdict.Fail)
            answer = new ChangeWriter(variant).AddTo(answer, ChangeFinder.For(variant, meter));
        if (!asked.IsComplete) answer = answer with { LeftOut = [AnswerPart.AskNext] };
        return Extras.Add(answer, variant, meter);
    }
}
