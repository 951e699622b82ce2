using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;

namespace Cablewright.Engine.Circuits;

/// <summary>The circuit that a build stands for.</summary>
/// <remarks>
/// Branches are the runs in their order, then assumed straps, then the body's resistance to each foot. The charging battery's
/// terminals are held. Another battery that shares its supply gives nothing or recharges, by case; one that feeds a supply of
/// its own is a source in every case.
/// </remarks>
internal sealed class Wiring
{
    /// <summary>A battery that feeds a supply alone is judged from its terminals: next to no resistance of its own.</summary>
    private const double TerminalOhms = 1e-6;

    private readonly CompleteBuild build;
    private readonly Dictionary<(string Place, Side Side), int> nodeOf = [];
    private readonly List<Branch> branches = [];
    private readonly List<double> fixedOhms = [];
    private readonly bool[] isAlone;
    private readonly int[] sourceBattery;
    private bool[] feedsAlone = [];

    public Wiring(CompleteBuild build)
    {
        this.build = build;
        foreach (CompleteRun run in build.Runs) branches.Add(new Branch(Node(run, run.From), Node(run, run.To)));
        AddBody();
        LoadPort[] loads =
            [.. build.Stated.Amplifiers
                .Select(amplifier => new LoadPort(Node(amplifier.Id, Side.Supply), Node(amplifier.Id, Side.Return)))];
        SourcePort[] batteries =
            [.. build.Batteries.Select(battery => new SourcePort(Node(battery.Id, Side.Supply), Node(battery.Id, Side.Return)))];
        Batteries = batteries;
        isAlone = FindAlone(batteries);
        sourceBattery = [.. Enumerable.Range(0, batteries.Length).Where(battery => battery != build.ChargingBattery)];
        SourcePort charging = batteries[build.ChargingBattery];
        Network = new Network(
            nodeOf.Count,
            branches,
            [.. sourceBattery.Select(battery => batteries[battery])],
            loads,
            [charging.Positive, charging.Negative, .. References(batteries)]);
        Solver = new CircuitSolver(Network);
    }

    public Network Network { get; }

    public CircuitSolver Solver { get; }

    /// <summary>The resistances behind the runs': straps and body.</summary>
    public IReadOnlyList<double> FixedOhms => fixedOhms;

    /// <summary>The cases that can differ for this build.</summary>
    public IReadOnlyList<OperatingCase> Cases => sourceBattery.Any(battery => !isAlone[battery])
        ? [OperatingCase.Running, OperatingCase.Recharging, OperatingCase.LowVoltage]
        : [OperatingCase.Running, OperatingCase.LowVoltage];

    /// <summary>The node of a run's end.</summary>
    public (int From, int To) EndsOf(int run) => (branches[run].From, branches[run].To);

    /// <summary>The node of a battery's positive terminal.</summary>
    public int PositiveOf(int battery) => nodeOf[(build.Batteries[battery].Id, Side.Supply)];

    /// <summary>Where the batteries stand, in their order.</summary>
    public IReadOnlyList<SourcePort> Batteries { get; }

    /// <summary>The nodes of the return side.</summary>
    public IReadOnlyList<int> ReturnNodes => [.. nodeOf.Where(pair => pair.Key.Side is Side.Return).Select(pair => pair.Value)];

    /// <summary>The nodes held at 0 V: one for each part of the return side.</summary>
    public IReadOnlyList<int> HeldReturnNodes => [.. Network.HeldNodes.Skip(1)];

    /// <summary>The node of the vehicle's body, or -1 where nothing returns over it.</summary>
    public int BodyNode => nodeOf.GetValueOrDefault((PlaceNames.Body, Side.Return), -1);

    /// <summary>The state of each source in a case.</summary>
    public SourceState[] SourcesIn(OperatingCase operatingCase) => [.. sourceBattery.Select(battery => isAlone[battery]
        ? new SourceState(build.LowestSupplyVolts, TerminalOhms)
        : new SourceState(
            build.Batteries[battery].HalfChargedVolts,
            operatingCase is OperatingCase.Recharging ? build.Batteries[battery].RechargingOhms : double.PositiveInfinity))];

    /// <summary>The potentials of the held nodes in a case.</summary>
    public double[] HeldVoltsIn(OperatingCase operatingCase)
    {
        var volts = new double[Network.HeldNodes.Count];
        volts[0] = operatingCase is OperatingCase.LowVoltage ? build.LowestSupplyVolts : build.ChargingVolts;
        return volts;
    }

    /// <summary>Whether an amplifier hangs on a supply that the charging battery does not reach.</summary>
    public bool FeedsAlone(int amplifier) => feedsAlone[amplifier];

    /// <summary>An amplifier's source voltage over the charging voltage, to which limits in volts are scaled.</summary>
    public double SourceShareOf(int amplifier) => SourceVoltsOf(amplifier) / build.ChargingVolts;

    /// <summary>The voltage that an amplifier's drop is counted from.</summary>
    public double SourceVoltsOf(int amplifier) => FeedsAlone(amplifier) ? build.LowestSupplyVolts : build.ChargingVolts;

    private int Node(CompleteRun run, string place)
    {
        int index = branches.Count;
        bool atFoot = place == PlaceNames.Body && build.Body.FootOfRun[index] >= 0;
        return atFoot ? Foot(build.Body.FootOfRun[index]) : Node(place, run.Side);
    }

    private int Foot(int battery) => Node($"{PlaceNames.Body}:{build.Batteries[battery].Id}", Side.Return);

    private int Node(string place, Side side)
    {
        if (!nodeOf.TryGetValue((place, side), out int node)) nodeOf.Add((place, side), node = nodeOf.Count);
        return node;
    }

    private void AddBody()
    {
        foreach (int battery in build.Body.AssumedStraps)
        {
            branches.Add(new Branch(Node(build.Batteries[battery].Id, Side.Return), Foot(battery)));
            fixedOhms.Add(build.Batteries[battery].StrapOhms);
        }

        foreach (int battery in build.Body.Feet)
        {
            branches.Add(new Branch(Node(PlaceNames.Body, Side.Return), Foot(battery)));
            fixedOhms.Add(build.BodyOhms);
        }
    }

    /// <summary>Which batteries are the first of a supply that the charging battery does not reach.</summary>
    private bool[] FindAlone(SourcePort[] batteries)
    {
        var supply = new DisjointSets(nodeOf.Count);
        for (int i = 0; i < build.Runs.Count; i++)
        {
            if (build.Runs[i].Side is Side.Supply) supply.Join(branches[i].From, branches[i].To);
        }

        int charged = supply.SetOf(batteries[build.ChargingBattery].Positive);
        feedsAlone = [.. build.Stated.Amplifiers.Select(amplifier => supply.SetOf(Node(amplifier.Id, Side.Supply)) != charged)];
        var led = new HashSet<int> { charged };
        return [.. batteries.Select(battery => led.Add(supply.SetOf(battery.Positive)))];
    }

    /// <summary>
    /// One battery's negative terminal for each part of the return side that no wire ties to the charging battery.
    /// </summary>
    private List<int> References(SourcePort[] batteries)
    {
        var tied = new DisjointSets(nodeOf.Count);
        foreach (Branch branch in branches) tied.Join(branch.From, branch.To);
        var held = new HashSet<int> { tied.SetOf(batteries[build.ChargingBattery].Negative) };
        return [.. batteries.Where(battery => held.Add(tied.SetOf(battery.Negative))).Select(battery => battery.Negative)];
    }
}
