using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>Holds kits against one build: what the job needs, against what each kit holds.</summary>
/// <remarks>
/// A kit's cables and fuses are tried in the build by the full assessment, so "thin" means that the build fails with them. Kits
/// whose cables and fuses come out alike share their trials, so that many kits are checked in hardly more time than their
/// distinct combinations take.
/// </remarks>
public sealed class KitChecker
{
    private readonly Ruleset ruleset;
    private readonly bool isBrief;
    private readonly Phrase phrase;
    private readonly KitTrials trials;
    private readonly BillOfMaterials needs;

    /// <summary>Works out what a build needs.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work, and ends it.</param>
    /// <param name="isBrief">For many kits: a kit that cannot serve by its lengths alone is passed over without a trial, and
    /// trials ask no questions.</param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    /// <exception cref="OperationCanceledException">The meter ended it.</exception>
    public KitChecker(Build build, Ruleset ruleset, WorkMeter meter, bool isBrief = false)
    {
        ArgumentNullException.ThrowIfNull(meter);
        this.isBrief = isBrief;
        this.ruleset = ruleset;
        phrase = new Phrase(build.Units);
        trials = new KitTrials(build, ruleset, meter, isBrief);
        needs = trials.Needs;
    }

    /// <summary>The build with everything that a kit could bring left open.</summary>
    public Assessment Baseline => trials.Baseline;

    /// <summary>How many distinct combinations of cables and fuses were assessed so far.</summary>
    public int TrialsMade => trials.Assessed;

    /// <summary>Checks one kit.</summary>
    /// <param name="kit">The kit; its power and ground wires have size and length, its fuses a rating.</param>
    public KitCheck Check(Kit kit)
    {
        var issues = new KitIssues(ruleset);
        var wording = new KitWording(issues, phrase, needs);
        IReadOnlyList<KitWire> power = KitWire.In(kit, KitPartKind.PowerWire, ruleset);
        IReadOnlyList<KitWire> ground = KitWire.In(kit, KitPartKind.GroundWire, ruleset);
        WirePlan supply = PlanOf(Side.Supply, power), back = PlanOf(Side.Return, ground);
        if (Baseline.Findings.FirstOrDefault(finding => finding.Severity is Severity.Fail) is { } anyway)
            wording.BuildFails(anyway);
        wording.Wires(power, ground, PiecesOf(Side.Supply).Count > 0, PiecesOf(Side.Return).Count > 0);
        wording.Shortages(supply, KitVerdict.DoesNotServe);
        wording.Shortages(back, KitVerdict.ServesWithChange);
        new KitSundries(issues, phrase, needs, ruleset).Check(kit);
        bool isTried = power.Count > 0 && !(isBrief && issues.Verdict is KitVerdict.DoesNotServe);
        KitTrial? trial = isTried ? Try(kit, supply, back, wording) : null;
        return new KitCheck
        {
            Trial = trial,
            Verdict = issues.Verdict,
            Summary = KitWording.Summary(kit, issues),
            Ruleset = ruleset.Id,
            Findings = issues.Findings,
            Needs = Baseline.Materials,
            Assumptions = [.. power.Concat(ground).Where(wire => wire.Part.Material is null).Select(Assumed)],
            SafetyNotes = ruleset.SafetyNotes,
        };
    }

    private IReadOnlyList<WirePiece> PiecesOf(Side side) =>
        [.. needs.Pieces.Where(piece => piece.Run.Side == side && !piece.IsVehicles)];

    private WirePlan PlanOf(Side side, IReadOnlyList<KitWire> wires) => new(PiecesOf(side), wires);

    /// <summary>First the supply's cables, then the returns' too, then the fuses too: the first that fails is to blame.</summary>
    private KitTrial Try(Kit kit, WirePlan supply, WirePlan back, KitWording wording)
    {
        KitTrial trial = trials.With(supply.ByRun);
        if (trials.NewFails(trial) is { Count: > 0 } thin)
        {
            wording.Thin(supply, thin, trial.Assessment, Baseline, KitVerdict.DoesNotServe);
            return trial;
        }

        Dictionary<string, KitWire> both = new(supply.ByRun.Concat(back.ByRun), StringComparer.Ordinal);
        trial = trials.With(both);
        if (trials.NewFails(trial) is { Count: > 0 } thinBack)
        {
            wording.Thin(back, thinBack, trial.Assessment, Baseline, KitVerdict.ServesWithChange);
            return trial;
        }

        wording.Marginal(trials.NewCautions(trial));
        return TryFuses(kit, both, trial, wording);
    }

    private KitTrial TryFuses(Kit kit, Dictionary<string, KitWire> wires, KitTrial wired, KitWording wording)
    {
        var pick = new FusePick(kit, wired.Assessment);
        wording.FusesMissing(pick);
        if (pick.BySlot.Count == 0) return wired;
        KitTrial fused = trials.With(wires, pick.BySlot);
        if (trials.NewFails(fused) is { Count: > 0 } wrong) wording.FusesWrong(pick, wrong, wired.Assessment);
        return fused;
    }

    private static Assumption Assumed(KitWire wire) => new(
        $"/kit/parts/{wire.Index}/material", "copper", "a size is stated without a material",
        "copper is what a plain size means in the trade");
}
