using Cablewright.Engine.Completion;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Evaluation;

/// <summary>Works out a decision: the circuit, the fuses it needs, the rules that do not hold.</summary>
internal sealed class Evaluator
{
    private const double SharePrecision = 1e-4;
    private const double FirstStep = 16;
    private const double SmallestShare = 1e-9;

    /// <summary>
    /// How far an answer stands off the point of collapse, where currents hang on the last digit of everything.
    /// </summary>
    private const double StandOff = 0.999;

    /// <summary>How much less is tried where the fuses that have still to be placed take their part.</summary>
    private const double StepDown = 0.7;

    /// <summary>
    /// After so many rounds the fuses stand as they are: each round moves the currents less, and what is off by then is judged.
    /// </summary>
    private const int MostRounds = 30;

    private readonly Operation operation;

    public Evaluator(CompleteBuild build)
    {
        Build = build;
        Wiring = new CircuitModel(build);
        operation = new Operation(build, Wiring);
        Shape = new SupplyShape(build, Wiring);
        Ampacities = new Ampacities(build);
    }

    public CompleteBuild Build { get; }

    public CircuitModel Wiring { get; }

    public SupplyShape Shape { get; }

    public Ampacities Ampacities { get; }

    /// <summary>How a current drawn by one amplifier alone divides among the runs at an operating point.</summary>
    public double[] Division(int amplifier, OperatingPoint point) => operation.Division(amplifier, point);

    /// <summary>Works out a decision at full output.</summary>
    /// <returns><c>null</c> where the voltage collapses.</returns>
    public DesignEvaluation? TryEvaluate(Decision decision) =>
        Settle(decision, 1) is { } settled ? Judged(settled.Decision, settled.Currents, 1) : null;

    /// <summary>Works out a decision at full output, or at the largest that has a solution.</summary>
    public DesignEvaluation Evaluate(Decision decision)
    {
        if (TryEvaluate(decision) is { } full) return full;
        double share = LargestShare(decision) * StandOff;
        (Decision Decision, WorstCurrents Currents)? settled = Settle(decision, share);
        while (settled is null) settled = Settle(decision, share = share > SmallestShare ? share * StepDown : 0);
        return Judged(settled.Value.Decision, settled.Value.Currents, share);
    }

    /// <summary>
    /// The largest share of the output that has a solution with the fuses as they stand, by halving; 0 where none has, since
    /// diodes in a row take the whole voltage.
    /// </summary>
    private double LargestShare(Decision decision)
    {
        double low = 1;
        do
        {
            if (low < SmallestShare) return 0;
            low /= FirstStep;
        }
        while (CurrentsOf(decision, low) is null);

        double high = low * FirstStep;
        while (high - low > SharePrecision * high)
        {
            double middle = (low + high) / 2;
            if (CurrentsOf(decision, middle) is not null) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>
    /// The currents if every load drew, at any voltage, what it draws where so much is lost: an estimate that always exists.
    /// </summary>
    public WorstCurrents Estimate(Decision decision, double[] lostVolts) => operation.Estimate(decision, lostVolts);

    private DesignEvaluation Judged(Decision decision, WorstCurrents currents, double share)
    {
        var guards = new GuardMap(Shape, decision);
        List<Breach> breaches = [.. Judgement.Of(Build, Wiring, Shape, Ampacities, decision, currents, guards)];
        if (share < 1) breaches.Insert(0, new Breach(BreachKind.VoltageCollapse, Severity.Fail, 0, false, 1, share));
        return new DesignEvaluation(decision, currents, guards, breaches, share);
    }

    /// <summary>
    /// Chooses fuses for the currents and currents for the fuses until both stay. A fuse changes the current a little by its own
    /// resistance; so that two ratings cannot call for each other for ever, what was once chosen only grows.
    /// </summary>
    private (Decision Decision, WorstCurrents Currents)? Settle(Decision decision, double share)
    {
        Decision? grown = null;
        operation.StartCold();
        for (int round = 0; ; round++)
        {
            if (CurrentsOf(decision, share) is not { } currents) return null;
            if (round == MostRounds) return (decision, currents);
            Decision placed = FusePlan.Place(Build, Shape, Ampacities, decision, currents, grown);
            if (placed.HasFusesOf(decision)) return (placed, currents);
            decision = grown = placed;
        }
    }

    private WorstCurrents? CurrentsOf(Decision decision, double share)
    {
        var points = new List<OperatingPoint>(3);
        foreach (OperatingCase operatingCase in Wiring.Cases)
        {
            if (operation.Find(decision, operatingCase, share) is not { } point) return null;
            points.Add(point);
        }

        return new WorstCurrents(points);
    }
}
