using Cablewright.Engine.Completion;
using Cablewright.Engine.DesignRules;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Evaluation;

/// <summary>Works out a design: the circuit, the fuses it needs, the rules that do not hold.</summary>
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

    private readonly OperatingPointSolver solver;

    public Evaluator(CompleteBuild build)
    {
        Model = BuildModel.Of(build);
        FuseLadders = new FuseLadders(Model);
        solver = new OperatingPointSolver(Model);
    }

    /// <summary>The build whose designs are worked out.</summary>
    public BuildModel Model { get; }

    /// <summary>The families that its fuses may be of.</summary>
    public FuseLadders FuseLadders { get; }

    /// <summary>How a current drawn by one amplifier alone divides among the runs at an operating point.</summary>
    public double[] Division(int amplifier, OperatingPoint point) => solver.Division(amplifier, point);

    /// <summary>What an amplifier loses in the conductors of supply and return alone, in volts.</summary>
    public double ConductorVolts(int amplifier, DesignEvaluation evaluation) =>
        solver.ConductorVolts(amplifier, evaluation.Design, evaluation.Envelope.WorstPointOf(amplifier));

    /// <summary>The same in those conductors alone that are given.</summary>
    public double GivenVolts(int amplifier, DesignEvaluation evaluation) => solver.ConductorVolts(
        amplifier, evaluation.Design, evaluation.Envelope.WorstPointOf(amplifier), isGivenAlone: true);

    /// <summary>Works out a design at full output.</summary>
    /// <returns><c>null</c> where the voltage collapses.</returns>
    public DesignEvaluation? TryEvaluate(Design design) =>
        Settle(design, 1) is { } settled ? Judged(settled.Design, settled.Envelope, 1) : null;

    /// <summary>Works out a design at full output, or at the largest that has a solution.</summary>
    public DesignEvaluation Evaluate(Design design)
    {
        if (TryEvaluate(design) is { } full) return full;
        double share = LargestShare(design) * StandOff;
        (Design Design, OperatingEnvelope Envelope)? settled = Settle(design, share);
        while (settled is null) settled = Settle(design, share = share > SmallestShare ? share * StepDown : 0);
        return Judged(settled.Value.Design, settled.Value.Envelope, share);
    }

    /// <summary>
    /// The largest share of the output that has a solution with the fuses as they stand, by halving; 0 where none has, since
    /// diodes in a row take the whole voltage.
    /// </summary>
    private double LargestShare(Design design)
    {
        double low = 1;
        do
        {
            if (low < SmallestShare) return 0;
            low /= FirstStep;
        }
        while (EnvelopeOf(design, low) is null);

        double high = low * FirstStep;
        while (high - low > SharePrecision * high)
        {
            double middle = (low + high) / 2;
            if (EnvelopeOf(design, middle) is not null) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>
    /// The currents if every load drew, at any voltage, what it draws where so much is lost: an estimate that always exists.
    /// </summary>
    public OperatingEnvelope Estimate(Design design, double[] lostVolts) => solver.Estimate(design, lostVolts);

    private DesignEvaluation Judged(Design design, OperatingEnvelope envelope, double share)
    {
        var protection = new ProtectionMap(Model.Topology, design);
        List<Violation> violations = share < 1 ? [VoltageCollapse.At(share)] : [];
        violations.AddRange(DesignRuleBook.Violations(new DesignFacts(Model, design, envelope, protection, solver)));
        return new DesignEvaluation(design, envelope, protection, violations, share);
    }

    /// <summary>
    /// Chooses fuses for the currents and currents for the fuses until both stay. A fuse changes the current a little by its own
    /// resistance; so that two ratings cannot call for each other for ever, what was once chosen only grows.
    /// </summary>
    private (Design Design, OperatingEnvelope Envelope)? Settle(Design design, double share)
    {
        Design? grown = null;
        solver.StartCold();
        for (int round = 0; ; round++)
        {
            if (EnvelopeOf(design, share) is not { } envelope) return null;
            if (round == MostRounds) return (design, envelope);
            Design placed = FusePlan.Place(Model, FuseLadders, design, envelope, grown);
            if (placed.HasFusesOf(design)) return (placed, envelope);
            design = grown = placed;
        }
    }

    private OperatingEnvelope? EnvelopeOf(Design design, double share)
    {
        var points = new List<OperatingPoint>(3);
        foreach (OperatingCase operatingCase in Model.Circuit.Cases)
        {
            if (solver.Find(design, operatingCase, share) is not { } point) return null;
            points.Add(point);
        }

        return new OperatingEnvelope(points, Model.Build.LastsAtLowest);
    }
}
