using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>The least that each amplifier draws in any choice that keeps a goal.</summary>
/// <remarks>
/// Let V be the source's voltage, D the drop, g the goal, and d a number that D is proven not to be below. A load of constant
/// power draws P/(V − D) ≥ P/(V − d); a constant resistance draws (V − D)/R ≥ (V − g)/R; a constant current is what it is. So a
/// floor of the drops gives a floor of the currents, and that, where every way is the same whatever the resistances, a new floor
/// of the drops: beginning with d = 0, each round is proven by the one before, by induction and without assuming that the circuit
/// as a whole responds monotonically.
/// </remarks>
internal sealed class LoadLowerBounds(BuildModel model, Goal goal)
{
    private readonly CompleteBuild build = model.Build;
    private readonly CircuitModel circuit = model.Circuit;

    /// <summary>The least current with the engine running, of an amplifier whose drop is at least this.</summary>
    public double Running(int load, double dropVolts)
    {
        LoadDraw draw = build.Draws[load].Full;
        double source = circuit.SourceVoltsOf(load);
        double volts = draw.Kind is LoadKind.ConstantPower ? Math.Max(dropVolts, 0) : goal.Volts[load];
        return CircuitSolver.Amps(draw, source - Math.Min(volts, goal.Volts[load]));
    }

    /// <summary>
    /// The least current at the lowest supply voltage; 0 where that does not last, and for a constant
    /// resistance, which draws more with the engine running.
    /// </summary>
    public double AtLowest(int load, double dropVolts)
    {
        LoadDraw draw = build.Draws[load].Full;
        return draw.Kind is LoadKind.ConstantResistance || build.Batteries.Count > 1 || !build.LastsAtLowest
            ? 0
            : CircuitSolver.Amps(draw, build.LowestSupplyVolts - Math.Clamp(dropVolts, 0, build.LowestSupplyVolts / 2));
    }

    /// <summary>
    /// The most full current that a fuse is chosen for, or the lasting one at the lowest supply voltage where that is more. While
    /// fuses are chosen they may still be smaller than in the end, and more is lost; never twice the goal.
    /// </summary>
    public double Most(int load)
    {
        LoadDraw draw = build.Draws[load].Full;
        double lost = draw.Kind is LoadKind.ConstantPower ? 2 * goal.Volts[load] : 0;
        return Math.Max(
            CircuitSolver.Amps(draw, circuit.SourceVoltsOf(load) - lost),
            ThermalShare(load) * CircuitSolver.Amps(draw, build.LowestSupplyVolts - lost));
    }

    /// <summary>Root-mean-square over full current.</summary>
    public double ThermalShare(int load) => build.Draws[load].ThermalShare;

    /// <summary>Whether an amplifier draws no less at a lower voltage.</summary>
    public bool DrawsNoLessWhenLow(int load) => build.Draws[load].Full.Kind is not LoadKind.ConstantResistance;
}
