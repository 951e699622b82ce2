using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Supply;

/// <summary>Half a second of full output on what the alternator has left, the batteries and the capacitors.</summary>
/// <remarks>
/// <para>Before, everything rests at the charging voltage. From the first moment every amplifier draws its full output, the
/// alternator gives no more than its limit, and each battery is its rest voltage E behind R and up to two resistances R_p that
/// show with a time constant τ: v = E − u − i R, du/dt = i R_p/τ − u/τ. A capacitor is v = q − i ESR, dq/dt = −i/C.</para>
/// <para>Method: the two-stage diagonally implicit Runge-Kutta formula of second order, stable for any step (γ = 1 − 1/√2). In
/// each stage a capacitor and a settling resistance are a voltage behind a resistance, so the circuit is solved as it always is,
/// constant-power loads included. Steps grow from 10 µs, since the capacitors give most in the first moments.</para>
/// <list type="table">
/// <item><term>q, u</term><description>Voltage in a capacitor; over a settling resistance, V.</description></item>
/// <item><term>i</term><description>Current that the part gives, A.</description></item>
/// </list>
/// </remarks>
internal sealed class Burst
{
    private const double FirstStep = 1e-5;
    private const double Growth = 1.1;
    private const double LargestShareOfLength = 0.01;
    private static readonly double Gamma = 1 - 1 / Math.Sqrt(2);

    private readonly CompleteBuild build;
    private readonly SupplyCircuit circuit;
    private readonly bool isHeld;
    private readonly bool withCapacitors;
    private readonly SourceState[] sources;
    private readonly Store[] stores;

    private Burst(CompleteBuild build, SupplyCircuit circuit, bool isHeld, bool withCapacitors)
    {
        this.build = build;
        this.circuit = circuit;
        this.isHeld = isHeld;
        this.withCapacitors = withCapacitors;
        sources = isHeld ? circuit.Held() : circuit.Resting();
        stores = [.. Stores()];
    }

    /// <summary>The burst of a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="circuit">Its circuit.</param>
    /// <param name="givenAmps">What the alternator or converter gives.</param>
    /// <param name="isHeld">Whether that is enough to hold the charging voltage; only what hangs behind a charger falls
    /// then.</param>
    public static BurstResult Of(CompleteBuild build, SupplyCircuit circuit, double givenAmps, bool isHeld)
    {
        double length = build.Ruleset.Supply.Burst.Value;
        double[]? with = new Burst(build, circuit, isHeld, true).Lowest(givenAmps, length / 1000);
        double[]? without = build.Capacitors.Count == 0
            ? with
            : new Burst(build, circuit, isHeld, false).Lowest(givenAmps, length / 1000);
        double[]? shown = with ?? without;
        int lowest = shown is null ? 0 : Array.IndexOf(shown, shown.Min());
        return new BurstResult(length, build.Stated.Amplifiers[lowest].Id, with?[lowest], without?[lowest]);
    }

    /// <summary>The lowest voltage at each amplifier, or <c>null</c> where full output is not held.</summary>
    public static double[]? LowestWithin(CompleteBuild build, SupplyCircuit circuit, double givenAmps, double seconds) =>
        new Burst(build, circuit, false, true).Lowest(givenAmps, seconds);

    private double[]? Lowest(double givenAmps, double seconds)
    {
        double[]? lowest = null;
        double step = FirstStep;
        for (double at = 0; at < seconds && stores.Length > 0; at += step)
        {
            step = Math.Min(Math.Min(step * Growth, LargestShareOfLength * seconds), seconds - at);
            if (Advance(givenAmps, step) is not { } volts) return null;
            lowest = lowest is null ? volts : [.. lowest.Zip(volts, Math.Min)];
        }

        return lowest ?? Solve(sources, givenAmps);
    }

    /// <summary>One step; the voltages at its end, or <c>null</c> where the circuit has no solution.</summary>
    private double[]? Advance(double givenAmps, double step)
    {
        double[] start = [.. stores.Select(store => store.Volts)];
        if (Stage(start, givenAmps, step) is null) return null;
        double[] slope = [.. stores.Select((store, i) => (store.Volts - start[i]) / (Gamma * step))];
        return Stage([.. start.Select((volts, i) => volts + (1 - Gamma) * step * slope[i])], givenAmps, step);
    }

    /// <summary>Solves x = base + γ h f(x) for all stores and the circuit at once.</summary>
    private double[]? Stage(double[] bases, double givenAmps, double step)
    {
        double h = Gamma * step;
        SourceState[] stage = [.. sources];
        for (int i = 0; i < stores.Length; i++)
        {
            Store store = stores[i];
            SourceState state = stage[store.Source];
            stage[store.Source] = new SourceState(
                state.Volts + store.Sign * bases[i] / store.Damping(h), state.Ohms + h / store.Farads / store.Damping(h));
        }

        if (Solve(stage, givenAmps) is not { } volts) return null;
        for (int i = 0; i < stores.Length; i++)
        {
            Store store = stores[i];
            double amps = circuit.SourceAmps(store.Source, stage[store.Source]);
            store.Volts = (bases[i] - store.Sign * h * amps / store.Farads) / store.Damping(h);
        }

        return volts;
    }

    /// <summary>Where the charging voltage is held, alternator and vehicle do not count.</summary>
    private double[]? Solve(SourceState[] states, double givenAmps) => isHeld
        ? circuit.Solve(states, 0, 0)
        : circuit.Solve(states, givenAmps, build.Supply.BaseLoadAmps);

    private IEnumerable<Store> Stores()
    {
        for (int battery = 0; battery < build.Batteries.Count; battery++)
        {
            if (isHeld && circuit.IsHeld(battery)) continue;
            IReadOnlyList<Polarisation> parts = build.Batteries[battery].Polarisation;
            sources[battery] = new SourceState(build.Batteries[battery].RestVolts, build.Batteries[battery].InternalOhms);
            foreach (Polarisation part in parts) yield return new Store(battery, part.Seconds / part.Ohms, part.Seconds, -1, 0);
        }

        for (int i = 0; i < build.Capacitors.Count && withCapacitors; i++)
        {
            int source = build.Batteries.Count + i;
            sources[source] = new SourceState(0, build.Capacitors[i].SeriesOhms);
            yield return new Store(source, build.Capacitors[i].Farads, double.PositiveInfinity, 1, build.ChargingVolts);
        }
    }

    /// <summary>A voltage that changes with the charge that passes: in a capacitor, or over a settling resistance.</summary>
    /// <param name="source">The source that it is part of.</param>
    /// <param name="farads">Its capacitance.</param>
    /// <param name="seconds">The time constant with which it drains by itself; infinite for a capacitor.</param>
    /// <param name="sign">1 where it drives the source's current, -1 where it opposes it.</param>
    /// <param name="volts">Its voltage at the start.</param>
    private sealed class Store(int source, double farads, double seconds, int sign, double volts)
    {
        public int Source => source;

        public double Farads => farads;

        public int Sign => sign;

        public double Volts { get; set; } = volts;

        /// <summary>How much a step shrinks the voltage by draining alone.</summary>
        public double Damping(double step) => 1 + step / seconds;
    }
}
