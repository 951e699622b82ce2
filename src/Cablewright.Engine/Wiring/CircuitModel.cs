using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>The circuit that a build stands for.</summary>
/// <remarks>
/// <para>Branches are the runs in their order, then assumed straps, then the body's resistance to each foot, then the chargers.
/// The charging battery's terminals are held. Another battery that shares its supply gives nothing or recharges, by case; one
/// that feeds a supply of its own is a source in every case.</para>
/// <para>A charger between batteries cuts its run at the end: the run feeds what the charger draws at its rating, and behind it
/// the battery feeds a supply of its own. In a short circuit it counts as closed. An alternator at a place of its own puts in
/// there what it gives hot, for no alternator gives its rated current for long. Where the build names the engine, that current
/// comes back to the alternator's case over the engine.</para>
/// </remarks>
internal sealed class CircuitModel
{
    /// <summary>A battery that feeds a supply alone is judged from its terminals: next to no resistance of its own.</summary>
    private const double TerminalOhms = 1e-6;

    /// <summary>A charger as a contact: open in use, closed where it fails.</summary>
    private const double OpenOhms = 1e9;
    private const double ClosedOhms = 1e-6;

    private readonly CompleteBuild build;
    private readonly Dictionary<(string Place, Side Side), int> nodeOf = [];
    private readonly List<Branch> branches = [];
    private readonly List<(int From, int To)> ends = [];
    private readonly List<double> fixedOhms = [];
    private readonly LoadDraw[] others;
    private readonly Lazy<SharedRuns> sharedSupplies;
    private readonly Lazy<FaultNetwork> supplyInFault;
    private readonly Lazy<FaultNetwork> wholeInFault;
    private readonly List<int>[] runsAtAmplifier;
    private readonly bool[] isAlone;
    private readonly int[] sourceBattery;
    private readonly int[][] strapsOf;

    public CircuitModel(CompleteBuild build)
    {
        this.build = build;
        runsAtAmplifier = [.. build.Draws.Select(_ => new List<int>(2))];
        foreach (CompleteRun run in build.Runs) AddRun(run);
        AddBody();
        ChargerRuns = [.. Enumerable.Range(0, build.Runs.Count).Where(IsCharger)];
        foreach (int run in ChargerRuns)
        {
            branches.Add(new Branch(branches[run].To, ends[run].To));
            fixedOhms.Add(OpenOhms);
        }

        SourcePort[] batteries =
            [.. build.Batteries.Select(battery => new SourcePort(Node(battery.Id, Side.Supply), Node(battery.Id, Side.Return)))];
        Batteries = batteries;
        LoadPort[] loads =
            [
                .. build.Stated.Amplifiers
                    .Select(amplifier => new LoadPort(Node(amplifier.Id, Side.Supply), Node(amplifier.Id, Side.Return))),
                .. ChargerRuns.Select(run => new LoadPort(branches[run].To, NegativeBeside)),
                .. build.PutsInCurrent ? [ChargingPort] : Array.Empty<LoadPort>(),
            ];
        others =
            [
                .. ChargerRuns.Select(run => new LoadDraw(LoadKind.ConstantPower, build.Runs[run].Isolator!.InputWatts)),
                .. Enumerable.Repeat(
                    new LoadDraw(LoadKind.ConstantCurrent, -(build.Supply.HotAmps ?? 0)),
                    loads.Length - build.Draws.Count - ChargerRuns.Count),
            ];
        strapsOf = [.. Enumerable.Range(0, batteries.Length).Select(StrapsFrom)];
        PartsRunning = Parts(isEngineOff: false);
        isAlone = PartsRunning.FirstOfOthers(batteries);
        sourceBattery = [.. Enumerable.Range(0, batteries.Length).Where(battery => battery != build.ChargingBattery)];
        Cases =
            [
                OperatingCase.Running,
                .. build.PutsInCurrent ? [OperatingCase.AlternatorResting] : Array.Empty<OperatingCase>(),
                .. sourceBattery.Any(battery => !isAlone[battery]) ? [OperatingCase.Recharging] : Array.Empty<OperatingCase>(),
                OperatingCase.LowVoltage,
            ];
        SourcePort charging = batteries[build.ChargingBattery];
        Network = new ElectricalNetwork(
            nodeOf.Count,
            branches,
            [.. sourceBattery.Select(battery => batteries[battery])],
            loads,
            [charging.Positive, charging.Negative, .. References(batteries)]);
        Solver = new CircuitSolver(Network, build.Meter);
        SharedReturns = new SharedRuns(
            build, ends, nodeOf.Count, Side.Return, [.. loads.Take(build.Draws.Count).Select(load => load.Negative)],
            [.. batteries.Select(battery => battery.Negative), .. build.Body.Feet.Select(Foot), .. GroundNodes]);
        sharedSupplies = new Lazy<SharedRuns>(() => new SharedRuns(
            build, ends, nodeOf.Count, Side.Supply, [.. loads.Take(build.Draws.Count).Select(load => load.Positive)],
            [.. batteries.Select(battery => battery.Positive)]));
        supplyInFault = new Lazy<FaultNetwork>(() =>
            InFault([.. nodeOf.Where(pair => pair.Key.Side is Side.Return).Select(pair => pair.Value)]));
        wholeInFault = new Lazy<FaultNetwork>(() => InFault(FixedReturnNodes));
    }

    public ElectricalNetwork Network { get; }

    /// <summary>Which amplifiers share which return.</summary>
    public SharedRuns SharedReturns { get; }

    /// <summary>Which amplifiers share which supply run.</summary>
    public SharedRuns SharedSupplies => sharedSupplies.Value;

    public CircuitSolver Solver { get; }

    /// <summary>The circuit in a short circuit with no resistance on the return side.</summary>
    public FaultNetwork SupplyInFault => supplyInFault.Value;

    /// <summary>The circuit in a short circuit with all its resistances.</summary>
    public FaultNetwork WholeInFault => wholeInFault.Value;

    /// <summary>The parts of the supply side with the engine running: relays are closed, diodes conduct, chargers part.</summary>
    public SupplyParts PartsRunning { get; }

    /// <summary>The same with the engine off: every isolator parts.</summary>
    public SupplyParts PartsWithEngineOff =>
        build.Runs.Any(run => run.Isolator is not null) ? Parts(isEngineOff: true) : PartsRunning;

    /// <summary>What the loads after the amplifiers draw: the chargers, and an alternator that puts in its current.</summary>
    /// <remarks>
    /// What that puts in leaves the battery's strap with the difference alone, so the strap is judged without it too. A charger
    /// stops before its battery is drawn down.
    /// </remarks>
    public LoadDraw[] OthersIn(OperatingCase operatingCase) => operatingCase switch
    {
        OperatingCase.Running or OperatingCase.Recharging => others,
        OperatingCase.LowVoltage => [.. others.Select(draw => draw with { Magnitude = 0 })],
        _ => [.. others.Select(WithoutAlternator)],
    };

    /// <summary>The runs that carry a charger.</summary>
    public IReadOnlyList<int> ChargerRuns { get; }

    /// <summary>The resistances behind the runs': straps, body and chargers.</summary>
    public IReadOnlyList<double> FixedOhms => fixedOhms;

    /// <summary>The same in a short circuit: the body at its most, chargers closed.</summary>
    public IReadOnlyList<double> FixedOhmsInFault =>
        [
            .. fixedOhms.Take(build.Body.AssumedStraps.Count), .. build.Body.Feet.Select(_ => build.MostBodyOhms),
            .. ChargerRuns.Select(_ => ClosedOhms),
        ];

    /// <summary>The cases that can differ for this build.</summary>
    public IReadOnlyList<OperatingCase> Cases { get; }

    /// <summary>The node of a run's end.</summary>
    public (int From, int To) EndsOf(int run) => ends[run];

    /// <summary>The runs that end at an amplifier.</summary>
    public IReadOnlyList<int> RunsAt(int amplifier) => runsAtAmplifier[amplifier];

    /// <summary>The node of a battery's positive terminal.</summary>
    public int PositiveOf(int battery) => nodeOf[(build.Batteries[battery].Id, Side.Supply)];

    /// <summary>Where the batteries stand, in their order.</summary>
    public IReadOnlyList<SourcePort> Batteries { get; }

    /// <summary>Where the alternator or the converter puts its current in.</summary>
    public LoadPort ChargingPort => new(
        build.AlternatorPlace is { } place ? Node(place, Side.Supply) : Batteries[build.ChargingBattery].Positive,
        NegativeOfAlternator);

    /// <summary>Where a charger puts its current in: the end of its run.</summary>
    public LoadPort OutputOf(int chargerRun) => new(ends[chargerRun].To, NegativeBeside);

    /// <summary>Where a part at a place is connected: between its supply and its return.</summary>
    public LoadPort PortAt(string place) =>
        new(nodeOf[(place, Side.Supply)], nodeOf.GetValueOrDefault((place, Side.Return), NegativeBeside));

    /// <summary>The nodes held at 0 V: one for each part of the return side.</summary>
    public IReadOnlyList<int> FixedReturnNodes => [.. Network.FixedPotentialNodes.Skip(1)];

    /// <summary>The node of the vehicle's body, or -1 where nothing returns over it.</summary>
    public int BodyNode => nodeOf.GetValueOrDefault((PlaceNames.Body, Side.Return), -1);

    private IEnumerable<int> GroundNodes => new[] { BodyNode, EngineNode }.Where(node => node >= 0);

    /// <summary>The node of the engine, or -1 where no run ends at it.</summary>
    private int EngineNode => nodeOf.GetValueOrDefault((PlaceNames.Engine, Side.Return), -1);

    /// <summary>The state of each source in a case.</summary>
    /// <remarks>
    /// With the engine off, or the alternator at its limit, every battery gives: each amplifier is fed from the one beside it.
    /// </remarks>
    public SourceState[] SourcesIn(OperatingCase operatingCase) =>
        [.. sourceBattery.Select(battery => SourceIn(operatingCase, battery))];

    private SourceState SourceIn(OperatingCase operatingCase, int battery)
    {
        if (isAlone[battery]) return new SourceState(build.LowestSupplyVolts, TerminalOhms);
        return operatingCase switch
        {
            OperatingCase.LowVoltage => new SourceState(build.LowestSupplyVolts - LargestFall, TerminalOhms),
            OperatingCase.Recharging => new SourceState(HalfCharged(battery), build.Batteries[battery].RechargingOhms),
            _ => new SourceState(HalfCharged(battery), double.PositiveInfinity),
        };
    }

    private double HalfCharged(int battery) =>
        Math.Min(build.Batteries[battery].HalfChargedVolts, build.ChargingVolts - LargestFall);

    /// <summary>The potentials of the fixed-potential nodes in a case.</summary>
    public double[] FixedVoltsIn(OperatingCase operatingCase)
    {
        var volts = new double[Network.FixedPotentialNodes.Count];
        volts[0] = operatingCase is OperatingCase.LowVoltage ? build.LowestSupplyVolts : build.ChargingVolts;
        return volts;
    }

    /// <summary>
    /// Whether a run is one of the vehicle's own grounds: from a battery to the body or the engine, or between these two.
    /// </summary>
    public bool IsStrap(int run) => build.Runs[run] is { Side: Side.Return } each
        && (build.Names[each.From].Kind, build.Names[each.To].Kind) is
            (PlaceKind.Body or PlaceKind.Engine, PlaceKind.Battery or PlaceKind.Body or PlaceKind.Engine)
            or (PlaceKind.Battery, PlaceKind.Body or PlaceKind.Engine);

    /// <summary>Whether the starter's current passes a strap.</summary>
    /// <remarks>
    /// The starter sits on the engine. A battery that a wire ties to the engine feeds it over that wire; another over its strap
    /// to the body and the engine's strap from there.
    /// </remarks>
    public bool CarriesStarter(int run)
    {
        if (!IsStrap(run)) return false;
        (PlaceKind Kind, int Index) from = build.Names[build.Runs[run].From], to = build.Names[build.Runs[run].To];
        if (from.Kind is not PlaceKind.Body && to.Kind is not PlaceKind.Body) return true;
        (PlaceKind Kind, int Index) other = from.Kind is PlaceKind.Body ? to : from;
        return !build.Body.AtEngine.Contains(other.Kind is PlaceKind.Battery ? other.Index : build.ChargingBattery);
    }

    /// <summary>
    /// The stated straps that a short circuit of a battery's feeds to the body comes back over, one behind the other: its own, or
    /// the engine's and its cable to the engine, where it has one.
    /// </summary>
    public IReadOnlyList<int> StrapsOf(int battery) => strapsOf[battery];

    /// <summary>Whether the alternator's supply does not reach a battery but through a charger.</summary>
    public bool IsParted(int battery) => !PartsRunning.IsCharged(Batteries[battery].Positive);

    /// <summary>Whether the battery that an amplifier hangs on is charged by a charger.</summary>
    public bool IsFedByCharger(int amplifier) =>
        ChargerRuns.Any(run => PartsRunning.Of(ends[run].To) == PartsRunning.Of(Network.Loads[amplifier].Positive));

    /// <summary>Whether an amplifier hangs on a supply that the charging battery does not reach.</summary>
    public bool FeedsAlone(int amplifier) => !PartsRunning.IsCharged(Network.Loads[amplifier].Positive);

    /// <summary>An amplifier's source voltage over the charging voltage, to which limits in volts are scaled.</summary>
    public double SourceShareOf(int amplifier) => SourceVoltsOf(amplifier) / build.ChargingVolts;

    /// <summary>The voltage that an amplifier's drop is counted from.</summary>
    public double SourceVoltsOf(int amplifier) => FeedsAlone(amplifier) ? build.LowestSupplyVolts : build.ChargingVolts;

    /// <summary>What an amplifier loses on the way to it and back, engine running, in volts.</summary>
    /// <remarks>
    /// Where the returns of others lift the negative terminal of its own battery above the one that its return leads to, it may
    /// get more than its source's voltage: then it loses nothing.
    /// </remarks>
    public double LostVolts(int amplifier, OperatingEnvelope envelope) =>
        Math.Max(0, SourceVoltsOf(amplifier) - envelope.TerminalVolts[amplifier]);

    private int[] StrapsFrom(int battery)
    {
        int[] straps = [.. Enumerable.Range(0, build.Runs.Count).Where(IsStrap)];
        int[] toBody = [.. straps.Where(run => build.Body.FootOfRun[run] == battery)];
        if (!build.Body.AtEngine.Contains(battery)) return toBody[..Math.Min(1, toBody.Length)];
        int[] ofEngine = [.. toBody.Where(EndsAtEngine).Take(1)];
        if (ofEngine.Length == 0 && toBody.Length > 0) return toBody[..1];
        string id = build.Batteries[battery].Id;
        return [.. ofEngine, .. straps.Where(run => EndsAtEngine(run) && build.Runs[run].EndsAt(id)).Take(1)];
    }

    private bool EndsAtEngine(int run) => build.Runs[run].EndsAt(PlaceNames.Engine);

    /// <summary>A battery behind a diode cannot give back what passes it, so it counts as no higher than what arrives.</summary>
    private double LargestFall => branches.Sum(branch => branch.FallVolts);

    private FaultNetwork InFault(IReadOnlyList<int> held) => new(Network.NodeCount, branches, Batteries, held, build.Meter);

    private SupplyParts Parts(bool isEngineOff) =>
        new(build.Runs, branches, nodeOf.Count, Batteries[build.ChargingBattery].Positive, isEngineOff);

    private static LoadDraw WithoutAlternator(LoadDraw draw) => draw.PutsIn ? draw with { Magnitude = 0 } : draw;

    private bool IsCharger(int run) => build.Runs[run].Isolator is { Kind: IsolatorKind.DcDcCharger };

    private void AddRun(CompleteRun run)
    {
        NoteAmplifier(run.From);
        NoteAmplifier(run.To);
        int from = Node(run, run.From), to = Node(run, run.To);
        int end = IsCharger(branches.Count) ? Node("charger:" + run.Id, Side.Supply) : to;
        branches.Add(new Branch(from, end, run.Isolator?.FallVolts ?? 0));
        ends.Add((from, to));
    }

    private void NoteAmplifier(string place)
    {
        if (build.Names[place] is (PlaceKind.Amplifier, var amplifier)) runsAtAmplifier[amplifier].Add(ends.Count);
    }

    /// <summary>Where a charger's own return ends.</summary>
    private int NegativeBeside => BodyNode >= 0 ? BodyNode : Batteries[build.ChargingBattery].Negative;

    /// <summary>Where its stated return starts; else the engine, if the build names it; else beside the battery.</summary>
    private int NegativeOfAlternator =>
        build.AlternatorPlace is { } place && nodeOf.TryGetValue((place, Side.Return), out int stated) ? stated
        : build.IsAlternatorOnEngine ? EngineNode
        : Batteries[build.ChargingBattery].Negative;

    private int Node(CompleteRun run, string place)
    {
        int index = ends.Count;
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
            string start = build.Body.AtEngine.Contains(battery) ? PlaceNames.Engine : build.Batteries[battery].Id;
            branches.Add(new Branch(Node(start, Side.Return), Foot(battery)));
            fixedOhms.Add(build.Batteries[battery].StrapOhms);
        }

        foreach (int battery in build.Body.Feet)
        {
            branches.Add(new Branch(Node(PlaceNames.Body, Side.Return), Foot(battery)));
            fixedOhms.Add(build.BodyOhms);
        }
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
