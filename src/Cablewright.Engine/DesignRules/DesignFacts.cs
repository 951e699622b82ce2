using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
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
internal sealed class DesignFacts(BuildModel model, Design design, OperatingEnvelope envelope, ProtectionMap protection)
{
    private readonly double[] ampacities =
        [.. design.Conductors.Select((choice, run) => model.Ampacities.Of(run, choice.Conductor).LimitAmps)];

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

    /// <summary>Whether a run leads to the alternator's own place.</summary>
    public bool IsAlternatorCable(int run) =>
        Build.AlternatorPlace is { } place && (Build.Runs[run].From == place || Build.Runs[run].To == place);

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
    /// What enters a run at an end before fuses open, where that is more than it may carry: with a fuse for each of its parallel
    /// conductors all of them count, else one alone.
    /// </summary>
    public double? TooMuchEntering(RunEnd end)
    {
        double entering = protection.EnteringAmps(end);
        double each = AmpacityOfEach(end.Run);
        if (each <= 0 || double.IsInfinity(entering)) return null;
        double most = protection.IsProtectedPerConductor(end) ? AmpacityOfAll(end.Run) : each;
        return Significant.Exceeds(entering, most) ? entering : null;
    }
}
