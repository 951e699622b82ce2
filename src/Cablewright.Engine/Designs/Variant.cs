using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Designs;

/// <summary>A build and all that was worked out of it, before it is put into words.</summary>
/// <param name="Evaluator">What worked it out.</param>
/// <param name="Sized">What was decided.</param>
/// <param name="Supply">What the supply can give.</param>
internal sealed record Variant(Evaluator Evaluator, SizedBuild Sized, SupplyReport Supply)
{
    /// <summary>The build, completed.</summary>
    public CompleteBuild Build => Evaluator.Model.Build;

    /// <summary>Works a build out.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work; a choice ends where it is used up.</param>
    public static Variant Of(Build build, Ruleset ruleset, WorkMeter meter)
    {
        var evaluator = new Evaluator(BuildCompletion.Complete(build, ruleset, meter));
        SizedBuild sized = Sizer.Size(evaluator);
        return new Variant(evaluator, sized, SupplyRuleBook.Report(evaluator.Model, sized.Evaluation));
    }

    /// <summary>
    /// A build much like this one, what is open chosen beginning with what is chosen here; <c>null</c> where everything is given
    /// and the voltage collapses, since how far it is from a solution takes long to find out.
    /// </summary>
    public Variant? Near(Build build, WorkMeter meter)
    {
        var evaluator = new Evaluator(BuildCompletion.Complete(build, Build.Ruleset, meter));
        return Sizer.TrySize(evaluator, Sized.Evaluation.Design.Conductors) is { } sized
            ? new Variant(evaluator, sized, SupplyRuleBook.Report(evaluator.Model, sized.Evaluation))
            : null;
    }

    /// <summary>The conductors as they were chosen, in the same build with another supply.</summary>
    /// <param name="build">The build with what it says of the supply changed, and nothing else.</param>
    /// <param name="meter">Counts the work.</param>
    public Variant WithSupplyOf(Build build, WorkMeter meter)
    {
        var evaluator = new Evaluator(BuildCompletion.Complete(build, Build.Ruleset, meter));
        DesignEvaluation evaluation = evaluator.Evaluate(SizingTask.WithoutFuses(Sized.Evaluation.Design.Conductors));
        return new Variant(
            evaluator, SizedBuild.Given(evaluator, evaluation), SupplyRuleBook.Report(evaluator.Model, evaluation));
    }

    /// <summary>Each run with what was decided for it, in the order of the build.</summary>
    public IReadOnlyList<DesignedRun> Runs => [.. Build.Runs.Select((run, index) => new DesignedRun(
        run,
        Sized.Evaluation.Design.Conductors[index],
        Sized.Evaluation.Design.FuseAt(RunEnd.Near(index)),
        Sized.Evaluation.Design.FuseAt(RunEnd.Far(index)),
        OperatingEnvelope.Flowing(Sized.Evaluation.Envelope.PeakAmps[index])))];

    /// <summary>Every rule that does not hold.</summary>
    public IEnumerable<Violation> Violations => Sized.Violations.Concat(Supply.Violations);

    /// <summary>The worst of them.</summary>
    public Verdict Verdict => Verdicts.Of(Violations.Select(violation => violation.Severity));

    /// <summary>Metal of all conductors, in grams.</summary>
    public double ConductorGrams => Enumerable.Range(0, Build.Runs.Count)
        .Sum(run => Sized.Evaluation.Design.Conductors[run].KilogramsPerMetre * Build.Runs[run].LengthMetres * 1000);

    /// <summary>Whether no rule fails.</summary>
    public bool Stands => Verdict < Verdict.Fail;

    /// <summary>
    /// Them in the order in which an answer names them: what weighs most first, of that safety, then the most dangerous kind,
    /// then in the order of the build.
    /// </summary>
    public IEnumerable<Violation> Ranked => Rank(Violations);

    /// <summary>What weighs most and, among equals, is the most dangerous; <c>null</c> where every rule holds.</summary>
    public Violation? Worst => Ranked.Select(violation => (Violation?)violation).FirstOrDefault();

    /// <summary>What is found in the order in which an answer names it.</summary>
    public static IEnumerable<Violation> Rank(IEnumerable<Violation> violations) => violations
        .OrderByDescending(violation => violation.Severity).ThenBy(violation => RuleBook.Of(violation.Kind).Concern)
        .ThenBy(violation => violation.Kind).ThenBy(violation => violation.Index);
}
