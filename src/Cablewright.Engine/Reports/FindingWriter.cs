using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Reports;

/// <summary>Puts breaches into words.</summary>
internal sealed class FindingWriter
{
    private const string OwnDrop = "limits.maxDrop";
    private const string OwnTime = "limits.engineOffTime";

    private readonly CompleteBuild build;
    private readonly SupplyShape topology;
    private readonly DropWording drop;
    private readonly HeatWording heat;
    private readonly FuseWording fuse;
    private readonly SupplyWording supply;
    private readonly BatteryWording battery;
    private readonly IsolatorWording isolator;
    private readonly FaultWording fault;

    public FindingWriter(Variant variant)
    {
        build = variant.Build;
        topology = variant.Evaluator.Model.Topology;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        var remedies = new Remedies(variant);
        drop = new DropWording(variant);
        heat = new HeatWording(variant, remedies);
        fuse = new FuseWording(variant, remedies);
        supply = new SupplyWording(build, variant.Supply);
        battery = new BatteryWording(build, variant.Supply);
        isolator = new IsolatorWording(build, evaluation, remedies);
        fault = new FaultWording(build, evaluation, variant.Sized.Faults, new FaultRemedies(build, evaluation));
    }

    /// <summary>
    /// The findings, the worst first; within a weight the most dangerous kind first, each in the order of the build.
    /// </summary>
    public IReadOnlyList<Finding> Write(IReadOnlyList<Breach> breaches) =>
        [.. breaches.OrderByDescending(breach => breach.Severity).ThenBy(breach => breach.Kind).ThenBy(breach => breach.Index)
            .Select(Write)];

    /// <summary>One of them.</summary>
    public Finding Write(Breach breach)
    {
        Wording wording = WordingOf(breach);
        string rule = breach.Kind is BreachKind.DropOverLimit && build.Drop.Rule == OwnDrop ? OwnDrop : RuleOf(breach);
        return new Finding(
            FindingCodes.CodeOf(breach.Kind),
            breach.Severity,
            wording.Pointer,
            wording.Message,
            wording.Unit is null ? null : breach.Measured,
            wording.Unit is null || !wording.HasLimit ? null : breach.Limit,
            wording.Unit,
            rule,
            rule is OwnDrop or OwnTime ? "the build's own limit" : build.Ruleset[rule].Citation,
            wording.Remedy,
            wording.Workings);
    }

    private string RuleOf(Breach breach) =>
        breach.Kind is BreachKind.FuseChosen && !topology.IsAtBattery(breach.End)
        ? FindingCodes.RuleOf(BreachKind.FuseMissingAtReduction)
        : FindingCodes.RuleOf(breach.Kind);

    private Wording WordingOf(Breach breach) => breach.Kind switch
    {
        BreachKind.VoltageCollapse => DropWording.Collapse(breach),
        BreachKind.DropOverLimit or BreachKind.DropOverTarget => drop.Over(breach),
        BreachKind.ReturnBelowSupply => drop.Return(breach),
        BreachKind.OverAmpacity => heat.OverAmpacity(breach),
        BreachKind.SurroundingsTooHot => heat.TooHot(breach),
        BreachKind.TerminalTooSmall => heat.Terminal(breach),
        BreachKind.FuseMissingAtBattery => fuse.MissingAtBattery(breach),
        BreachKind.FuseMissingAtReduction => fuse.MissingAtReduction(breach),
        BreachKind.FuseAboveConductor => fuse.AboveConductor(breach),
        BreachKind.NoFuseFits => fuse.NoneFits(breach),
        BreachKind.ParallelUnguarded => fuse.Parallel(breach),
        BreachKind.FuseBelowLoad => fuse.BelowLoad(breach),
        BreachKind.FuseNotStandard => fuse.NotStandard(breach),
        BreachKind.FuseVoltageTooLow => fuse.VoltageTooLow(breach),
        BreachKind.FuseTooFar or BreachKind.FuseNotNear => fuse.Distance(breach),
        BreachKind.FuseChosen => fuse.MustBeFitted(breach),
        BreachKind.FuseInReturn => fuse.InReturn(breach),
        BreachKind.RatingAboveOnBoardFuse => supply.OnBoardFuse(breach),
        BreachKind.SupplyNotCharged => supply.NotCharged(breach),
        BreachKind.AverageAboveAlternator => supply.AverageAboveAlternator(breach),
        BreachKind.PeakAboveAlternator => supply.PeakAboveAlternator(breach),
        BreachKind.AverageAboveIdle => supply.AverageAboveIdle(breach),
        BreachKind.FuseMayNotOpen => fault.MayNotOpen(breach),
        BreachKind.FuseOpensTooLate => fault.OpensTooLate(breach),
        BreachKind.BandRecalled => fault.BandRecalled(breach),
        BreachKind.InterruptingUnknown or BreachKind.InterruptingTooLow => fault.Interrupting(breach),
        BreachKind.OverloadHurts => fault.Overload(breach),
        BreachKind.NotSelective => fault.NotSelective(breach),
        BreachKind.BodyDropLarge => FaultWording.BodyDrop(breach),
        BreachKind.PeakAboveConverter => supply.PeakAboveConverter(breach),
        BreachKind.FullOutputNotHeld => supply.NotHeld(),
        BreachKind.VoltageLowAtFullOutput => supply.VoltageLow(breach),
        BreachKind.EngineOffTooShort => battery.EngineOff(breach),
        BreachKind.MixedChemistries => battery.Mixed(breach),
        BreachKind.AverageAboveCharger => battery.AboveCharger(breach),
        BreachKind.CapacitorHoldsBriefly => battery.Capacitor(breach),
        BreachKind.IsolatorOverRated => isolator.OverRated(breach),
        BreachKind.IsolatorUnrated => isolator.Unrated(breach),
        BreachKind.AlternatorCableUnguarded => isolator.AlternatorCable(breach),
        BreachKind.AlternatorDropLarge => isolator.AlternatorDrop(breach),
        BreachKind.FuseHotBelowLoad => fuse.HotBelowLoad(breach),
        BreachKind.SharedReturnBelowSupply => drop.SharedReturn(breach),
        _ => supply.Budget(),
    };
}
