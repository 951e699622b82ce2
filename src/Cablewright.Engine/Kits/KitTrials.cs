using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>A build with a kit's cables and fuses in the place of its own, assessed; each distinct one once.</summary>
/// <remarks>
/// Tried in three steps, so that a failure has one cause: the supply's cables with all else open; the returns' cables too; the
/// fuses too. What fails with everything open fails with any kit and is not counted against this one.
/// </remarks>
internal sealed class KitTrials
{
    private readonly Ruleset ruleset;
    private readonly WorkMeter meter;
    private readonly bool advises;
    private readonly Build open;
    private readonly HashSet<(string, string)> failsAnyway;
    private readonly HashSet<(string, string)> cautionsAnyway;
    private readonly Dictionary<TrialFittings, KitTrial> known = [];

    public KitTrials(Build build, Ruleset ruleset, WorkMeter meter, bool isBrief)
    {
        this.ruleset = ruleset;
        this.meter = meter;
        advises = !isBrief;
        Assessment first = Assessor.Assess(Opened(build, null), ruleset, meter, advises: false, out Variant variant);
        HashSet<string> vehicles = [.. new BillOfMaterials(variant.Build, first.Runs).Pieces.Where(piece => piece.IsVehicles)
            .Select(piece => piece.Run.Id)];
        open = Opened(WithAddedRuns(build, first), vehicles);
        Baseline = Assessor.Assess(open, ruleset, meter, advises: false, out variant);
        Needs = new BillOfMaterials(variant.Build, Baseline.Runs);
        failsAnyway = Places(Baseline, Severity.Fail);
        cautionsAnyway = Places(Baseline, Severity.Caution);
    }

    /// <summary>The build with everything that a kit could bring left open.</summary>
    public Assessment Baseline { get; }

    /// <summary>What the job needs beyond the conductors themselves.</summary>
    public BillOfMaterials Needs { get; }

    /// <summary>How many assessments were made for the trials.</summary>
    public int Assessed => known.Count;

    /// <summary>The build with these cables and, where given, these fuses; what is not given stays open.</summary>
    public KitTrial With(IReadOnlyDictionary<string, KitWire> wires, IReadOnlyDictionary<RunEnd, KitPart>? fuses = null)
    {
        var fittings = new TrialFittings([.. open.Runs.Select((run, index) => FittingOf(run, index, wires, fuses))]);
        if (known.TryGetValue(fittings, out KitTrial? trial)) return trial;
        Build tried = open with { Runs = [.. open.Runs.Select((run, index) => fittings[index].In(run))] };
        return known[fittings] = new KitTrial(tried, Assessor.Assess(tried, ruleset, meter, advises));
    }

    /// <summary>What fails in a trial and not without the kit.</summary>
    public IReadOnlyList<Finding> NewFails(KitTrial trial) => New(trial.Assessment, Severity.Fail, failsAnyway);

    /// <summary>What wants a look in a trial and not without the kit.</summary>
    public IReadOnlyList<Finding> NewCautions(KitTrial trial) => New(trial.Assessment, Severity.Caution, cautionsAnyway);

    private static IReadOnlyList<Finding> New(Assessment trial, Severity severity, HashSet<(string, string)> anyway) =>
        [.. trial.Findings.Where(
            finding => finding.Severity == severity && !anyway.Contains((finding.Code, finding.Pointer)))];

    private static HashSet<(string, string)> Places(Assessment assessment, Severity severity) =>
        [.. assessment.Findings.Where(finding => finding.Severity == severity)
            .Select(finding => (finding.Code, finding.Pointer))];

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

    /// <summary>Returns that the assessment had to add are cables to be bought like any other.</summary>
    private static Build WithAddedRuns(Build build, Assessment first) => build with
    {
        Runs =
        [
            .. build.Runs,
            .. first.Runs.Skip(build.Runs.Count).Select(run => new Run
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
