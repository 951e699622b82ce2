using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Supply;

/// <summary>What each group of batteries is asked for, and what charges it.</summary>
/// <remarks>
/// Currents are those at the charging voltage. A charger between batteries draws on average what its own group needs, up to its
/// rating; at full output it draws its rating. With the engine off each amplifier draws at the batteries' working voltage, half
/// way to their limit.
/// </remarks>
internal sealed class EnergyBalance
{
    private readonly CompleteBuild build;
    private readonly OperatingEnvelope envelope;

    /// <summary>What was worked out already: chargers in parallel would else ask for the same many times over.</summary>
    private readonly Dictionary<SupplyGroup, double> averages = new(ReferenceEqualityComparer.Instance);

    public EnergyBalance(BuildModel model, OperatingEnvelope envelope)
    {
        build = model.Build;
        this.envelope = envelope;
        CircuitModel circuit = model.Circuit;
        SupplyParts running = circuit.PartsRunning, off = circuit.PartsWithEngineOff;
        Running = SupplyGroup.Of(model, running);
        Main = Running.First(group => group.IsCharged(build));
        BehindChargers = [.. Running.Where(group => group.ChargersTo.Length > 0)];
        Playing = [.. (off == running ? Running : SupplyGroup.Of(model, off)).Where(group => group.Amplifiers.Length > 0)];
        PeakAmps = Main.Amplifiers.Sum(amplifier => envelope.LoadAmps[amplifier])
            + Main.ChargersFrom.Sum(run => InputAmps(run, RatingOf(run), build.ChargingVolts));
        AverageAmps = AverageOf(Main);
    }

    /// <summary>The groups with the engine running.</summary>
    public IReadOnlyList<SupplyGroup> Running { get; }

    /// <summary>The group that the alternator charges.</summary>
    public SupplyGroup Main { get; }

    /// <summary>The groups that a charger charges.</summary>
    public IReadOnlyList<SupplyGroup> BehindChargers { get; }

    /// <summary>The groups with the engine off that feed amplifiers.</summary>
    public IReadOnlyList<SupplyGroup> Playing { get; }

    /// <summary>Everything that the alternator's group feeds, at full output.</summary>
    public double PeakAmps { get; }

    /// <summary>The same on its programme, on average.</summary>
    public double AverageAmps { get; }

    /// <summary>What a group is asked for on average, what it passes on to chargers included.</summary>
    /// <remarks>Chargers form no ring, so this ends: no deeper than there are batteries.</remarks>
    public double AverageOf(SupplyGroup group) =>
        averages.TryGetValue(group, out double known) ? known : averages[group] = WorkOutAverage(group);

    private double WorkOutAverage(SupplyGroup group)
    {
        double volts = group == Main ? build.ChargingVolts : build.LowestSupplyVolts;
        return group.Amplifiers.Sum(amplifier => envelope.LoadAmps[amplifier] * build.Draws[amplifier].AverageShare)
            + group.ChargersFrom.Sum(run => InputAmps(run, AverageOutput(run), volts));
    }

    /// <summary>What the chargers of a group can put in.</summary>
    public double ChargedAmps(SupplyGroup group) => group.ChargersTo.Sum(RatingOf);

    /// <summary>What is left above the vehicle's own draw; negative where that alone is too much.</summary>
    public double Available(double givenAmps) => givenAmps - build.Supply.BaseLoadAmps;

    /// <summary>What a group gives with the engine off.</summary>
    public double EngineOffAmps(SupplyGroup group)
    {
        double volts = WorkingVoltsOf(group);
        double own = group.IsCharged(build) ? build.Supply.StandbyAmps : 0;
        return own + group.Amplifiers.Sum(amplifier =>
            CircuitSolver.Amps(build.Draws[amplifier].Full, volts) * build.Draws[amplifier].AverageShare);
    }

    /// <summary>Minutes of music with the engine off until a group reaches its limit.</summary>
    public double EngineOffMinutes(SupplyGroup group) => Minutes(group, EngineOffAmps(group));

    /// <summary>
    /// Each battery's working voltage by the ampere-hours that may be drawn from it, so that a small or empty battery beside a
    /// large one does not lower the voltage at which that one works.
    /// </summary>
    private double WorkingVoltsOf(SupplyGroup group)
    {
        CompleteBattery[] batteries = [.. group.Batteries.Select(battery => build.Batteries[battery])];
        double usable = batteries.Sum(battery => battery.Energy.UsableAmpHours);
        return usable > 0
            ? batteries.Sum(battery => battery.WorkingVolts * battery.Energy.UsableAmpHours) / usable
            : batteries.Average(battery => battery.WorkingVolts);
    }

    /// <summary>
    /// Minutes until the groups that must give while the engine runs reach their limits; <c>null</c>: none must.
    /// </summary>
    /// <param name="givenAmps">What the alternator or converter gives.</param>
    public double? MinutesRunning(double givenAmps)
    {
        double minutes = Running
            .Where(group => group == Main || group.ChargersTo.Length > 0)
            .Min(group => Minutes(group, DeficitOf(group, givenAmps)));
        return double.IsInfinity(minutes) ? null : minutes;
    }

    /// <summary>What a group's batteries give on average while the engine runs; negative: they are charged.</summary>
    public double DeficitOf(SupplyGroup group, double givenAmps) =>
        AverageOf(group) - (group == Main ? Available(givenAmps) : ChargedAmps(group));

    /// <summary>Minutes until a group reaches its limit; infinite where it gives nothing.</summary>
    public double Minutes(SupplyGroup group, double amps) => Peukert.Hours(group.CellsOf(build), amps) * 60;

    private double RatingOf(int chargerRun) => build.Runs[chargerRun].Isolator!.RatedAmps!.Value;

    private double AverageOutput(int chargerRun)
    {
        SupplyGroup behind = Running.First(group => group.ChargersTo.Contains(chargerRun));
        return RatingOf(chargerRun) * Math.Min(1, AverageOf(behind) / ChargedAmps(behind));
    }

    private double InputAmps(int chargerRun, double outputAmps, double volts) =>
        build.Runs[chargerRun].Isolator!.InputWatts * outputAmps / RatingOf(chargerRun) / volts;
}
