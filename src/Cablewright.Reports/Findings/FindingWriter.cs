using Cablewright.Engine.Completion;
using Cablewright.Engine.DesignRules;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports.Findings;

/// <summary>Puts violations into words.</summary>
internal sealed class FindingWriter
{
    private readonly CompleteBuild build;
    private readonly Speech speech;
    private readonly SupplyTopology topology;
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
        speech = build.Speech;
        topology = variant.Evaluator.Model.Topology;
        DesignEvaluation evaluation = variant.Sized.Evaluation;
        var remedies = new Remedies(variant);
        drop = new DropWording(variant);
        heat = new HeatWording(variant, remedies);
        fuse = new FuseWording(variant, remedies);
        supply = new SupplyWording(build, variant.Supply);
        battery = new BatteryWording(build, variant.Supply);
        isolator = new IsolatorWording(build, evaluation, remedies);
        fault = new FaultWording(build, topology, evaluation, variant.Sized.Faults, new FaultRemedies(build, evaluation));
    }

    /// <summary>
    /// The findings, the worst first; within a weight the most dangerous kind first. What is wrong alike in several places is one
    /// finding, but for fuses to be fitted, each of which is part of the answer.
    /// </summary>
    public IReadOnlyList<Finding> Write(IReadOnlyList<Violation> violations) =>
        [.. Variant.Rank(violations)
            .GroupBy(violation => violation.Kind is ViolationKind.FuseChosen
                ? (violation.Kind, violation.Severity, violation.End)
                : (violation.Kind, violation.Severity, default))
            .Select(alike => Write([.. alike], alike.First()))];

    private Finding Write(Violation[] alike, Violation worst)
    {
        Finding finding = Write(worst);
        if (alike.Length == 1) return finding;
        string[] pointers = [finding.Pointer, .. alike.Skip(1).Select(violation => WordingOf(violation).Pointer)];
        (string key, string name, IEnumerable<string> all) = RuleBook.Of(worst.Kind) switch
        {
            { IsOfRun: true } => ("finding.also.runs", "alsoRuns", alike.Select(violation => build.Runs[violation.Index].Id)),
            AmplifierRule => (
                "finding.also.amplifiers", "alsoAmplifiers",
                alike.Select(violation => build.Stated.Amplifiers[violation.Index].Id)),
            _ => ("finding.also", "alsoPointers", pointers),
        };
        string[] places = [.. all.Distinct().Skip(1)];
        Message? message = places.Length == 0 ? null : speech.SayOf(
            new Message(finding.Message, (Params?)finding.Params ?? []), key, new Params { [name] = Param.Of(places) });
        return finding with
        {
            AlsoAt = [.. pointers.Distinct().Skip(1)],
            Message = message?.Text ?? finding.Message,
            Params = message?.Params ?? finding.Params,
        };
    }

    /// <summary>One of them.</summary>
    public Finding Write(Violation violation)
    {
        Wording wording = WordingOf(violation);
        string code = RuleBook.Of(violation.Kind).Finding.Code;
        Figure rule = violation.Kind is ViolationKind.DropOverLimit ? build.Drop.Rule : RuleOf(violation);
        return new Finding
        {
            Code = code,
            Severity = violation.Severity,
            Concern = RuleBook.Of(violation.Kind).Concern,
            Pointer = wording.Pointer,
            Message = speech.Text($"finding.{code}{wording.Variant}", wording.Values),
            Params = wording.Values.OrNone,
            Measured = wording.Unit is null ? null : violation.Measured,
            Limit = wording.Unit is null || !wording.HasLimit ? null : violation.Limit,
            Unit = wording.Unit,
            Rule = rule.Id,
            Source = rule.Citation,
            Remedy = wording.Remedy ?? speech.Text("remedy." + code, wording.Values),
            Workings = wording.Workings ?? speech.Text("workings." + code, wording.Values),
        };
    }

    private Figure RuleOf(Violation violation) =>
        RuleBook.Of(violation.Kind is ViolationKind.FuseChosen && !topology.IsAtBattery(violation.End)
            ? ViolationKind.FuseMissingAtReduction
            : violation.Kind).FigureIn(build.Ruleset);

    private Wording WordingOf(Violation violation) => violation.Kind switch
    {
        ViolationKind.VoltageCollapse => DropWording.Collapse(violation),
        ViolationKind.DropOverLimit or ViolationKind.DropHigh or ViolationKind.DropOverTarget => drop.Over(violation),
        ViolationKind.ReturnBelowSupply => drop.Return(violation),
        ViolationKind.OutsideSupplyRange => drop.OutsideRange(violation),
        ViolationKind.StrapTooSmall => heat.Strap(violation),
        ViolationKind.StrapBelowFuses => heat.StrapBelowFuses(violation),
        ViolationKind.CopperClad => heat.CopperClad(violation),
        ViolationKind.FuseOpensOnNote => fuse.OpensOnNote(violation),
        ViolationKind.OverAmpacity => heat.OverAmpacity(violation),
        ViolationKind.SurroundingsTooHot => heat.TooHot(violation),
        ViolationKind.TerminalTooSmall => heat.Terminal(violation),
        ViolationKind.FuseMissingAtBattery => fuse.MissingAtBattery(violation),
        ViolationKind.FuseMissingAtReduction => fuse.MissingAtReduction(violation),
        ViolationKind.FuseAboveConductor => fuse.AboveConductor(violation),
        ViolationKind.NoFuseFits => fuse.NoneFits(violation),
        ViolationKind.ParallelUnprotected => fuse.Parallel(violation),
        ViolationKind.FuseBelowLoad => fuse.BelowLoad(violation),
        ViolationKind.FuseNotStandard => fuse.NotStandard(violation),
        ViolationKind.FuseVoltageTooLow => fuse.VoltageTooLow(violation),
        ViolationKind.FuseTooFar or ViolationKind.FuseNotNear => fuse.Distance(violation),
        ViolationKind.FuseChosen => fuse.MustBeFitted(violation),
        ViolationKind.FuseInReturn => fuse.InReturn(violation),
        ViolationKind.RatingAboveOnBoardFuse => supply.OnBoardFuse(violation),
        ViolationKind.FuseBelowOwnFuses => fuse.BelowOwnFuses(violation),
        ViolationKind.SupplyNotCharged => supply.NotCharged(violation),
        ViolationKind.AverageAboveAlternator => supply.AverageAboveAlternator(violation),
        ViolationKind.PeakAboveAlternator => supply.PeakAboveAlternator(violation),
        ViolationKind.AverageAboveIdle => supply.AverageAboveIdle(violation),
        ViolationKind.FuseMayNotOpen => fault.MayNotOpen(violation),
        ViolationKind.FuseClearsTooLate => fault.ClearsTooLate(violation),
        ViolationKind.BandRecalled => fault.BandRecalled(violation),
        ViolationKind.InterruptingUnknown or ViolationKind.InterruptingTooLow => fault.Interrupting(violation),
        ViolationKind.OverloadHurts => fault.Overload(violation),
        ViolationKind.NotSelective => fault.NotSelective(violation),
        ViolationKind.BodyDropLarge => FaultWording.BodyDrop(violation),
        ViolationKind.PeakAboveConverter => supply.PeakAboveConverter(violation),
        ViolationKind.FullOutputNotHeld => supply.NotHeld(),
        ViolationKind.VoltageLowAtFullOutput => supply.VoltageLow(violation),
        ViolationKind.EngineOffTooShort => battery.EngineOff(violation),
        ViolationKind.MixedChemistries => battery.Mixed(violation),
        ViolationKind.AverageAboveCharger => battery.AboveCharger(violation),
        ViolationKind.CapacitorHoldsBriefly => battery.Capacitor(violation),
        ViolationKind.IsolatorOverRated => isolator.OverRated(violation),
        ViolationKind.IsolatorUnrated => isolator.Unrated(violation),
        ViolationKind.AlternatorCableUnprotected => isolator.AlternatorCable(violation),
        ViolationKind.AlternatorDropLarge => isolator.AlternatorDrop(violation),
        ViolationKind.FuseHotBelowLoad => fuse.HotBelowLoad(violation),
        ViolationKind.SharedReturnBelowSupply => drop.SharedReturn(violation),
        ViolationKind.BeyondStock => SupplyWording.BeyondStock(),
        _ => SupplyWording.Budget(),
    };
}
