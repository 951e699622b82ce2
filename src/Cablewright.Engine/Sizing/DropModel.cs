using Cablewright.Engine.Conductors;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>Predicts what another conductor in a run does to the amplifiers' drops, without solving the circuit again.</summary>
/// <remarks>
/// A change ΔR of run r moves the drop of amplifier a by I_r · i_ra · ΔR, with I_r the run's current and i_ra its share of a
/// current drawn by a alone (reciprocity of resistive circuits). Temperatures and currents are taken as they are.
/// </remarks>
internal sealed class DropModel(SizingTask task, OperatingEnvelope envelope)
{
    private readonly double[]?[] division = new double[]?[task.Build.Draws.Count];

    /// <summary>Whether it predicts from these currents.</summary>
    public bool IsOf(OperatingEnvelope others) => ReferenceEquals(envelope, others);

    /// <summary>
    /// Volts that an amplifier gains when a run changes from one conductor to another; negative where it loses.
    /// </summary>
    public double Gain(int amplifier, int run, ConductorChoice from, ConductorChoice to)
    {
        OperatingPoint point = envelope.WorstPointOf(amplifier);
        double share = (division[amplifier] ??= Division(amplifier, point))[run];
        double ohms = (from.OhmsPerMetreAt20 - to.OhmsPerMetreAt20) * task.Build.Runs[run].LengthMetres
            * from.Conductor.Properties.TemperatureFactor(point.Celsius[run]);
        return share * point.PeakAmps[run] * ohms;
    }

    private double[] Division(int amplifier, OperatingPoint point)
    {
        task.Count(task.Build.Runs.Count);
        return task.Evaluator.Division(amplifier, point);
    }
}
