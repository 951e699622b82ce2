using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;

namespace Cablewright.Engine.Sizing;

/// <summary>What was decided, and what is known of it.</summary>
/// <param name="Evaluation">The design and what it leads to.</param>
/// <param name="Faults">What short circuits and overloads would do to it.</param>
/// <param name="IsComplete">Whether the search came to its end.</param>
internal sealed record SizedBuild(DesignEvaluation Evaluation, FaultReport Faults, bool IsComplete)
{
    /// <summary>A design that nothing was searched for.</summary>
    /// <param name="evaluator">What worked it out.</param>
    /// <param name="evaluation">The design and what it leads to.</param>
    public static SizedBuild Given(Evaluator evaluator, DesignEvaluation evaluation) =>
        new(evaluation, FaultRuleBook.Report(evaluator.Model, evaluation), true);

    private readonly Lazy<double?> gap = new((double?)null);

    /// <summary>Whether it is proven that nothing better reaches the goal that was reached.</summary>
    public bool IsOptimal => Gap is 0;

    /// <summary>Whether it is of conductors that the trade does not keep, since nothing that it keeps serves.</summary>
    public bool IsBeyondStock { get; init; }

    /// <summary>
    /// The most by which the best choice can weigh less, as a share of this one; <c>null</c> where nothing is known.
    /// </summary>
    public double? Gap => gap.Value;

    /// <summary>Works the gap out, once it is asked for.</summary>
    public Func<double?> GapBy
    {
        init => gap = new Lazy<double?>(value);
    }

    /// <summary>What the open runs cost, in the currency of the prices or in kilograms of copper.</summary>
    public double Cost { get; init; }

    /// <summary>Every rule that does not hold.</summary>
    public IEnumerable<Violation> Violations => Evaluation.Violations.Concat(Faults.Violations);
}
