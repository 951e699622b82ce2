using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>Works out the cases in which the supply is looked at.</summary>
internal sealed class SupplyCases
{
    private readonly CompleteBuild build;
    private readonly EnergyBalance balance;
    private readonly SupplyCircuit circuit;

    public SupplyCases(CompleteBuild build, SupplyCircuit circuit, EnergyBalance balance)
    {
        this.build = build;
        this.circuit = circuit;
        this.balance = balance;
    }

    /// <summary>
    /// The cases that can be worked out: at speed and at idle where it is known what charges, and with the engine off.
    /// </summary>
    public IReadOnlyList<SupplyCaseResult> All()
    {
        var cases = new List<SupplyCaseResult>(3);
        if (build.Supply.HotAmps is { } hot)
        {
            cases.Add(Running(SupplyCaseName.AtSpeed, hot));
            cases.Add(Running(SupplyCaseName.Idle, build.Supply.IdleAmps!.Value));
        }

        if (build.CountsEnergy) cases.Add(EngineOff());
        return cases;
    }

    /// <summary>Whether the alternator holds the charging voltage at full output.</summary>
    public static bool IsHeld(EnergyBalance balance, double givenAmps) =>
        !Significant.Exceeds(balance.PeakAmps, balance.Available(givenAmps));

    private SupplyCaseResult Running(SupplyCaseName name, double givenAmps)
    {
        double left = balance.Available(givenAmps);
        double[]? volts = IsHeld(balance, givenAmps)
            ? circuit.Solve(circuit.Held(), 0, 0)
            : circuit.Solve(circuit.Resting(), givenAmps, build.Supply.BaseLoadAmps);
        return new SupplyCaseResult(
            name, left, left - balance.AverageAmps, left - balance.PeakAmps,
            build.CountsEnergy ? balance.MinutesRunning(givenAmps) : null, volts?.Min());
    }

    private SupplyCaseResult EngineOff()
    {
        double[]? volts = circuit.Solve(circuit.Resting(), null, build.Supply.StandbyAmps);
        double average = balance.Playing.Sum(balance.EngineOffAmps);
        double peak = build.Draws.Sum(draw => CircuitSolver.Amps(draw.Full, build.LowestSupplyVolts));
        double minutes = balance.Playing.Min(balance.EngineOffMinutes);
        return new SupplyCaseResult(
            SupplyCaseName.EngineOff, -build.Supply.StandbyAmps, -average, -build.Supply.StandbyAmps - peak,
            double.IsInfinity(minutes) ? null : minutes, volts?.Min());
    }
}
