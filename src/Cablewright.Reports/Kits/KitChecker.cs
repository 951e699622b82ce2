using Cablewright.Contract.Assessments;
using Cablewright.Contract.Kits;
using Cablewright.Engine;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Kits;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Assessments;
using Cablewright.Reports.Faults;
using Cablewright.Reports.Materials;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using Build = Cablewright.Engine.Builds.Build;
using Kit = Cablewright.Engine.Kits.Kit;

namespace Cablewright.Reports.Kits;

/// <summary>Holds kits against one build: what the job needs, against what each kit holds.</summary>
/// <remarks>
/// A kit's cables and fuses are tried in the build by the full computation, so "thin" means that the build fails with them. Kits
/// whose cables and fuses come out alike share their trials, so that many kits are checked in hardly more time than their
/// distinct combinations take.
/// </remarks>
public sealed class KitChecker
{
    private readonly Ruleset ruleset;
    private readonly WorkMeter meter;
    private readonly bool isBrief;
    private readonly Speech speech;
    private readonly KitTrials trials;
    private readonly BillOfMaterials needs;
    private readonly Favourable? favourable;
    private KitTrials? favourableTrials;

    /// <summary>Works out what a build needs.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work, and ends it.</param>
    /// <param name="isBrief">For many kits: a kit that cannot serve by its lengths alone is passed over without a trial, and no
    /// trial is put into words.</param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    /// <exception cref="OperationCanceledException">The meter ended it.</exception>
    public KitChecker(Build build, Ruleset ruleset, WorkMeter meter, bool isBrief = false)
    {
        ArgumentNullException.ThrowIfNull(meter);
        BuildFaultWriter.ThrowIfFaulty(build);
        this.isBrief = isBrief;
        this.ruleset = ruleset;
        this.meter = meter;
        speech = build.Speech;
        trials = new KitTrials(build, ruleset, meter);
        favourable = Favourable.Of(build, ruleset);
        needs = trials.Needs;
        Needs = MaterialList.Of(needs, new PriceList(build.Sizing, ruleset), speech);
    }

    /// <summary>What the job needs, chosen without regard to any kit.</summary>
    public IReadOnlyList<MaterialLine> Needs { get; }

    /// <summary>How many runs the build has.</summary>
    public int Runs => trials.Baseline.Build.Runs.Count;

    /// <summary>How many distinct combinations of cables and fuses were worked out so far.</summary>
    public int TrialsMade => trials.Assessed + (favourableTrials?.Assessed ?? 0);

    /// <summary>Checks one kit.</summary>
    /// <param name="kit">The kit; its power and ground wires have size and length, its fuses a rating.</param>
    /// <param name="revision">The state of the shop's catalogue that it was taken from, where it was.</param>
    public KitAnswer Check(Kit kit, long? revision = null)
    {
        var issues = new KitIssues(ruleset);
        var wording = new KitWording(issues, speech, needs);
        IReadOnlyList<KitWire> power = KitWire.In(kit, KitPartKind.PowerWire, ruleset);
        IReadOnlyList<KitWire> ground = KitWire.In(kit, KitPartKind.GroundWire, ruleset);
        WirePlan supply = PlanOf(Side.Supply, power), back = PlanOf(Side.Return, ground);
        if (trials.Baseline.Worst is { Severity: Severity.Fail } anyway) wording.BuildFails(trials.Baseline, anyway);
        wording.Wires(power, ground, PiecesOf(Side.Supply).Count > 0, PiecesOf(Side.Return).Count > 0);
        wording.Shortages(supply, KitVerdict.DoesNotServe);
        wording.Shortages(back, KitVerdict.ServesWithChange);
        new KitSundries(issues, speech, needs, ruleset).Check(kit);
        bool isTried = power.Count > 0 && !(isBrief && issues.Verdict is KitVerdict.DoesNotServe);
        Variant? trial = isTried ? Try(kit, supply, back, wording) : null;
        return new KitAnswer
        {
            Verdict = issues.Verdict,
            Summary = wording.Summary(kit),
            Ruleset = ruleset.Id,
            EngineVersion = Release.EngineVersion,
            Revision = revision,
            Findings = issues.Findings,
            Needs = Needs,
            Trial = trial is null || isBrief ? null : Assessor.Answer(trial, meter, advises: true),
            Assumptions = [.. power.Concat(ground).Where(wire => wire.Part.Material is null).Select(Assumed)],
            SafetyNotes = ruleset.SafetyNotes,
        };
    }

    private IReadOnlyList<WirePiece> PiecesOf(Side side) =>
        [.. needs.Pieces.Where(piece => piece.Run.Run.Side == side && !piece.IsVehicles).Select(trials.Cut)];

    private WirePlan PlanOf(Side side, IReadOnlyList<KitWire> wires) => new(PiecesOf(side), wires);

    /// <summary>First the supply's cables, then the returns' too, then the fuses too: the first that fails is to blame.</summary>
    private Variant Try(Kit kit, WirePlan supply, WirePlan back, KitWording wording)
    {
        Variant trial = trials.With(supply.ByRun);
        if (trials.NewFails(trial) is [var thin, ..])
        {
            if (ServesIfStated(supply.ByRun)) wording.ServesIf(supply, thin, trial, Unstated(supply), ruleset);
            else wording.Thin(supply, thin, trial, trials.Baseline, KitVerdict.DoesNotServe);
            return trial;
        }

        Dictionary<string, KitWire> both = new(supply.ByRun.Concat(back.ByRun), StringComparer.Ordinal);
        trial = trials.With(both);
        if (trials.NewFails(trial) is [var thinBack, ..])
        {
            if (ServesIfStated(both)) wording.ServesIf(back, thinBack, trial, Unstated(back), ruleset);
            else wording.Thin(back, thinBack, trial, trials.Baseline, KitVerdict.ServesWithChange);
            return trial;
        }

        wording.Marginal(trial, trials.NewCautions(trial));
        wording.Thick(trial, KitTrials.TooThick(trial));
        return TryFuses(kit, both, trial, wording);
    }

    /// <summary>Whether cables with which the build fails serve under conditions that nobody has stated.</summary>
    private bool ServesIfStated(IReadOnlyDictionary<string, KitWire> wires)
    {
        if (favourable is null) return false;
        favourableTrials ??= new KitTrials(favourable.Build, ruleset, meter);
        Variant trial = favourableTrials.With(wires);
        return favourableTrials.NewFails(trial).Count == 0 && favourableTrials.NewCautions(trial).Count == 0;
    }

    /// <summary>What would have to be stated of the build, or of the kit.</summary>
    private IReadOnlyList<Member> Unstated(WirePlan plan) =>
        plan.ByRun.Values.All(wire => wire.Part.InsulationCelsius is not null)
        ? [.. favourable!.Unstated.Where(member => member is not Member.InsulationRating)]
        : favourable!.Unstated;

    private Variant TryFuses(Kit kit, Dictionary<string, KitWire> wires, Variant wired, KitWording wording)
    {
        var pick = new FusePick(kit, wired);
        wording.FusesMissing(pick);
        if (pick.BySlot.Count == 0) return wired;
        Variant fused = trials.With(wires, pick.BySlot);
        if (trials.NewFails(fused) is { Count: > 0 } wrong) wording.FusesWrong(pick, wrong, fused, wired);
        return fused;
    }

    private Assumption Assumed(KitWire wire)
    {
        Params values = new() { ["material"] = Material.Copper.Word() };
        return new Assumption
        {
            Pointer = $"/kit/parts/{wire.Index}/material",
            Value = speech.Value("material", values),
            Reason = speech.Text("assumption.plain-material.reason", values),
            Params = values,
            Source = speech.Text("assumption.plain-material.source", []),
        };
    }
}
