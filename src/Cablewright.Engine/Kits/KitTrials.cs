using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>A build with a kit's cables and fuses in the place of its own, worked out; each distinct one once.</summary>
/// <remarks>
/// Tried in three steps, so that a failure has one cause: the supply's cables with all else open; the returns' cables too; the
/// fuses too. What fails with everything open fails with any kit and is not counted against this one.
/// </remarks>
internal sealed class KitTrials
{
    private readonly Ruleset ruleset;
    private readonly WorkMeter meter;
    private readonly Build open;
    private readonly HashSet<(ViolationKind, RunEnd)> failsAnyway;
    private readonly HashSet<(ViolationKind, RunEnd)> cautionsAnyway;
    private readonly Dictionary<TrialFittings, Variant> known = [];
    private readonly int stated;

    public KitTrials(Build build, Ruleset ruleset, WorkMeter meter)
    {
        this.ruleset = ruleset;
        this.meter = meter;
        stated = build.Runs.Count;
        Variant first = WorkOut(Opened(build, null));
        HashSet<string> vehicles = [.. new BillOfMaterials(first).Pieces.Where(piece => piece.IsVehicles)
            .Select(piece => piece.Run.Id)];
        open = Opened(WithAddedRuns(build, first), vehicles);
        Baseline = WorkOut(open);
        Needs = new BillOfMaterials(Baseline);
        failsAnyway = Places(Baseline, Severity.Fail);
        cautionsAnyway = Places(Baseline, Severity.Caution);
    }

    /// <summary>The build with everything that a kit could bring left open.</summary>
    public Variant Baseline { get; }

    /// <summary>What the job needs beyond the conductors themselves.</summary>
    public BillOfMaterials Needs { get; }

    /// <summary>How many builds were worked out for the trials.</summary>
    public int Assessed => known.Count;

    /// <summary>
    /// A piece as it is to be cut. Of a run that is not stated the length is what is usual, and nothing has to be allowed beside.
    /// </summary>
    public WirePiece Cut(WirePiece piece) =>
        Baseline.Build.Runs.Skip(stated).Any(run => run.Id == piece.Run.Id)
            ? piece with { CutMetres = piece.Run.Run.LengthMetres }
            : piece;

    /// <summary>The build with these cables and, where given, these fuses; what is not given stays open.</summary>
    public Variant With(IReadOnlyDictionary<string, KitWire> wires, IReadOnlyDictionary<RunEnd, KitPart>? fuses = null)
    {
        var fittings = new TrialFittings([.. open.Runs.Select((run, index) => FittingOf(run, index, wires, fuses))]);
        if (known.TryGetValue(fittings, out Variant? trial)) return trial;
        return known[fittings] = WorkOut(open with { Runs = [.. open.Runs.Select((run, index) => fittings[index].In(run))] });
    }

    /// <summary>What fails in a trial and not without the kit, the most dangerous first.</summary>
    public IReadOnlyList<Violation> NewFails(Variant trial) => New(trial, Severity.Fail, failsAnyway);

    /// <summary>Terminals that usually accept less than the cable of a trial.</summary>
    public static IReadOnlyList<Violation> TooThick(Variant trial) =>
        [.. trial.Ranked.Where(violation => violation is { Kind: ViolationKind.TerminalTooSmall, Severity: Severity.Info })];

    /// <summary>What wants a look in a trial and not without the kit.</summary>
    public IReadOnlyList<Violation> NewCautions(Variant trial) => New(trial, Severity.Caution, cautionsAnyway);

    private Variant WorkOut(Build build) =>
        Variant.Of(build, ruleset, meter.FairPart(WorkBudgets.Sizing));

    private static IReadOnlyList<Violation> New(Variant trial, Severity severity, HashSet<(ViolationKind, RunEnd)> anyway) =>
        [.. trial.Ranked.Where(
            violation => violation.Severity == severity && !anyway.Contains((violation.Kind, violation.End)))];

    private static HashSet<(ViolationKind, RunEnd)> Places(Variant variant, Severity severity) =>
        [.. variant.Violations.Where(violation => violation.Severity == severity)
            .Select(violation => (violation.Kind, violation.End))];

    /// <summary>Sizes, metals and fuses left open; the vehicle's own cables stay as they are.</summary>
    private static Build Opened(Build build, HashSet<string>? vehicles) => build with
    {
        Include = [],
        Runs = [.. build.Runs.Select(run => vehicles is null || vehicles.Contains(run.Id) ? run : run with
        {
            Conductor = new ConductorWish
            {
                InsulationCelsius = run.Conductor.InsulationCelsius,
                Count = run.Conductor.Count,
            },
            Fuse = null,
            FarFuse = null,
        })],
    };

    /// <summary>Returns that had to be added are cables to be bought like any other.</summary>
    private static Build WithAddedRuns(Build build, Variant first) => build with
    {
        Runs =
        [
            .. build.Runs,
            .. first.Build.Runs.Skip(build.Runs.Count).Select(run => new Run
            {
                Id = run.Id, From = run.From, To = run.To, LengthMetres = run.LengthMetres, Route = run.Route, Side = run.Side,
            }),
        ],
    };

    private static RunFitting FittingOf(
        Run run, int index, IReadOnlyDictionary<string, KitWire> wires, IReadOnlyDictionary<RunEnd, KitPart>? fuses)
    {
        KitWire? wire = wires.GetValueOrDefault(run.Id);
        return new RunFitting(
            wire?.Conductor,
            wire?.Part.InsulationCelsius ?? run.Conductor.InsulationCelsius,
            FuseFitting.Of(fuses?.GetValueOrDefault(RunEnd.Near(index))),
            FuseFitting.Of(fuses?.GetValueOrDefault(RunEnd.Far(index))));
    }
}
