using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <summary>All that the rules about a design look at.</summary>
/// <param name="model">The build.</param>
/// <param name="design">What was decided.</param>
/// <param name="envelope">What the circuit does with it.</param>
/// <param name="protection">Which fuses protect which run.</param>
/// <param name="solver">Tells what is lost in the conductors alone.</param>
internal sealed class DesignFacts(BuildModel model, Design design, OperatingEnvelope envelope, ProtectionMap protection,
    OperatingPointSolver solver)
{
    private readonly double[] ampacities =
        [.. design.Conductors.Select((choice, run) => model.Ampacities.Of(run, choice.Conductor).LimitAmps)];

    private readonly double?[] conductorVolts = new double?[model.Build.Draws.Count];

    /// <summary>The build.</summary>
    public CompleteBuild Build => model.Build;

    /// <summary>It as a circuit.</summary>
    public CircuitModel Circuit => model.Circuit;

    /// <summary>Its supply side.</summary>
    public SupplyTopology Topology => model.Topology;

    /// <summary>What was decided.</summary>
    public Design Design => design;

    /// <summary>What the circuit does with it.</summary>
    public OperatingEnvelope Envelope => envelope;

    /// <summary>Which fuses protect which run.</summary>
    public ProtectionMap Protection => protection;

    /// <summary>The ampacity of one conductor of a run.</summary>
    public double AmpacityOfEach(int run) => ampacities[run];

    /// <summary>The ampacity of all conductors of a run.</summary>
    public double AmpacityOfAll(int run) => ampacities[run] * design.Conductors[run].Count;

    /// <summary>The ampacity of the strap that is assumed for a battery.</summary>
    public double AmpacityOfAssumedStrap(int battery) => model.Ampacities.OfAssumedStrap(battery);

    /// <summary>The continuous current at an end of a run: behind a charger its output.</summary>
    public double ContinuousAmpsAt(RunEnd end) =>
        (end.IsFar ? Build.Runs[end.Run].Isolator?.ChargerAmps : null) ?? envelope.ThermalAmps[end.Run];

    /// <summary>Whether a run leads to the alternator's own place.</summary>
    public bool IsAlternatorCable(int run) => Build.IsAlternatorCable(Build.Runs[run]);

    /// <summary>Whether a run is fed by a battery at an end with no fuse there.</summary>
    public bool IsUnfusedAtBattery(RunEnd end) => design.FuseAt(end) is null && Topology.IsAtBattery(end);

    /// <summary>
    /// How well the runs at an amplifier conduct, in metres to the ohm at 20 °C: its strongest supply run, since another may only
    /// pass the supply on, and its returns together.
    /// </summary>
    public (double Supply, double Return) MetresPerOhmAt(int amplifier)
    {
        double supply = 0, back = 0;
        foreach (int run in Circuit.RunsAt(amplifier))
        {
            double metresPerOhm = 1 / design.Conductors[run].OhmsPerMetreAt20;
            if (Build.Runs[run].Side is Side.Supply) supply = Math.Max(supply, metresPerOhm);
            else back += metresPerOhm;
        }

        return (supply, back);
    }

    /// <summary>
    /// What enters a run at an end before fuses open, where that is more than it may carry. Of parallel conductors one may come
    /// to carry all that its own fuse and those upstream let through.
    /// </summary>
    public double? TooMuchEntering(RunEnd end)
    {
        double entering = protection.EnteringAmps(end);
        double each = AmpacityOfEach(end.Run);
        if (each <= 0 || double.IsInfinity(entering)) return null;
        if (design.FuseAt(end) is { PerConductor: true } own && design.Conductors[end.Run].Count is > 1 and var count)
        {
            double alone = Math.Min(own.RatingAmps, entering);
            return Significant.Exceeds(alone, each) ? alone * count : null;
        }

        double most = protection.IsProtectedPerConductor(end) ? AmpacityOfAll(end.Run) : each;
        return Significant.Exceeds(entering, most) ? entering : null;
    }

    /// <summary>What an amplifier loses in the conductors of supply and return alone, in volts.</summary>
    /// <param name="amplifier">The amplifier.</param>
    /// <param name="orLess">Where the whole loss is no more than this, that is answered: it is quicker to tell.</param>
    public double ConductorVolts(int amplifier, double orLess = 0)
    {
        double whole = Circuit.LostVolts(amplifier, envelope);
        return whole <= orLess
            ? whole
            : conductorVolts[amplifier] ??= solver.ConductorVolts(amplifier, design, envelope.WorstPointOf(amplifier));
    }

    /// <summary>
    /// How much it weighs that more enters a run than it may carry: up to the next standard rating it is worth knowing, up to
    /// half as much again a caution.
    /// </summary>
    public Severity SeverityOfEntering(RunEnd end, double entering)
    {
        int count = protection.IsProtectedPerConductor(end) ? design.Conductors[end.Run].Count : 1;
        double ampacity = AmpacityOfEach(end.Run), each = entering / count;
        FuseFamily family = design.FuseAt(end)?.Family ?? Build.Ruleset.FuseFamilies.UsualFor(each);
        double next = family.NextRating(ampacity) ?? 0;
        double most = ampacity * Build.Ruleset.Fuse.MostOfAmpacity.Value;
        return Significant.Exceeds(each, most) ? Severity.Fail : Significant.Exceeds(each, next) ? Severity.Caution
            : Severity.Info;
    }
}
