using Cablewright.Contract.Assessments;
using Cablewright.Engine;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Rules;
using Cablewright.Engine.ShortCircuits;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Findings;
using Cablewright.Reports.Materials;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Writes the answer from what was worked out.</summary>
internal sealed class AssessmentWriter(Variant variant)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly SizedBuild sized = variant.Sized;
    private readonly SupplyReport supply = variant.Supply;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Assessment Write(IReadOnlyList<FollowUp> questions)
    {
        List<Violation> violations = [.. variant.Violations];
        if (BeyondStock.Rule.Check(sized) is { } rare) violations.Add(rare);
        if (BudgetReached.Rule.Check(sized) is { } unfinished) violations.Add(unfinished);
        IReadOnlyList<Finding> findings = new FindingWriter(variant).Write(violations);
        Verdict verdict = Verdicts.Of(findings.Select(finding => finding.Severity));
        var costs = new PriceList(build.Stated.Sizing, build.Ruleset);
        IReadOnlyList<MaterialLine> materials = MaterialList.Of(new BillOfMaterials(variant), costs, build.Speech);
        return new Assessment
        {
            Id = AssessmentIdentity.Of(build.Stated, build.Ruleset),
            Verdict = verdict,
            Verdicts = new ConcernVerdicts
            {
                Safety = VerdictOn(Concern.Safety),
                Performance = VerdictOn(Concern.Performance),
                Supply = VerdictOn(Concern.Supply),
            },
            Summary = Summary.Of(variant, verdict, findings),
            Ruleset = build.Ruleset.Id,
            EngineVersion = Release.EngineVersion,
            Assumptions = new AssumptionWriter(build.Speech).Write(build.Assumptions),
            AskNext = questions,
            Supply = SupplyAnswer.Of(build, evaluation, supply),
            Amplifiers = [.. Enumerable.Range(0, build.Draws.Count).Select(AmplifierOf)],
            Runs = [.. Enumerable.Range(0, build.Runs.Count).Select(RunOf)],
            Findings = findings,
            Sizing = build.Runs.Any(run => run.Given is null) ? SizingOf() : null,
            Materials = materials,
            MaterialCost = MaterialList.CostOf(materials, costs),
            SafetyNotes = build.Ruleset.SafetyNotes,
        };

        Verdict VerdictOn(Concern concern) => Engine.Rules.Verdicts.Of(
            findings.Where(finding => finding.Concern == concern).Select(finding => finding.Severity));
    }

    private AmplifierResult AmplifierOf(int amplifier)
    {
        double terminal = evaluation.Envelope.TerminalVolts[amplifier];
        double lost = model.Circuit.LostVolts(amplifier, evaluation.Envelope);
        double amps = evaluation.Envelope.LoadAmps[amplifier];
        double conductors = Math.Min(lost, variant.Evaluator.ConductorVolts(amplifier, evaluation));
        return new AmplifierResult
        {
            Id = build.Stated.Amplifiers[amplifier].Id,
            Name = build.Stated.Amplifiers[amplifier].Name,
            PeakCurrentAmps = amps,
            ThermalCurrentAmps = evaluation.Envelope.ThermalLoadAmps[amplifier],
            TerminalVolts = terminal,
            DropVolts = lost,
            DropPercent = lost / model.Circuit.SourceVoltsOf(amplifier) * 100,
            ConductorDropVolts = conductors,
            ConductorDropPercent = conductors / model.Circuit.SourceVoltsOf(amplifier) * 100,
            LostInWireWatts = lost * amps,
            OutputShortfallWatts = build.Draws[amplifier].ShortfallWatts(terminal),
        };
    }

    private RunResult RunOf(int index)
    {
        CompleteRun run = build.Runs[index];
        ConductorChoice choice = evaluation.Design.Conductors[index];
        AmpacityFigures each = model.Ampacities.Of(index, choice.Conductor);
        double amps = OperatingEnvelope.Flowing(evaluation.Envelope.PeakAmps[index]), ohms = evaluation.Envelope.Ohms[index];
        double thermal = OperatingEnvelope.Flowing(evaluation.Envelope.ThermalAmps[index]);
        double limit = each.LimitAmps * choice.Count;
        bool isUnprotected = run.Side is Side.Return || evaluation.Protection.IsUnprotected(index);
        return new RunResult
        {
            Id = run.Id,
            Name = run.Index is { } stated ? build.Stated.Runs[stated].Name : null,
            Side = run.Side,
            From = run.From,
            To = run.To,
            LengthMetres = run.LengthMetres,
            Route = run.Route,
            Conductor = ConductorOf(run, choice),
            PeakCurrentAmps = amps,
            ThermalCurrentAmps = thermal,
            ResistanceMilliohms = ohms * 1000,
            DropVolts = ohms * amps,
            LossWatts = ohms * amps * amps,
            TemperatureCelsius = evaluation.Envelope.Celsius[index],
            AmpacityAmps = limit,
            AmpacityTableAmps = each.TableAmps * choice.Count,
            AmpacityHeatBalanceAmps = each.HeatBalanceAmps * choice.Count,
            Utilisation = limit > 0 ? thermal / limit : null,
            GuardedBy = isUnprotected
                ? []
                : [.. evaluation.Protection.RunsProtecting(index).Select(device => build.Runs[device].Id)],
            Fuse = FuseOf(RunEnd.Near(index)),
            FarFuse = FuseOf(RunEnd.Far(index)),
            Isolator = run.Isolator is null ? null : IsolatorOf(run.Isolator, thermal),
        };
    }

    private static IsolatorResult IsolatorOf(CompleteIsolator isolator, double thermalAmps) => new()
    {
        Kind = isolator.Kind,
        RatedAmps = isolator.RatedAmps,
        ThroughAmps = isolator.ChargerAmps ?? thermalAmps,
        LossVolts = isolator.ChargerAmps is null ? isolator.FallVolts + thermalAmps * isolator.ContactOhms : 0,
    };

    private static ConductorResult ConductorOf(CompleteRun run, ConductorChoice choice) => new()
    {
        Decided = run.Given is null ? Decided.Chosen : Decided.Given,
        Size = choice.Conductor.Size.Label,
        AreaMm2 = choice.Conductor.Size.MetalAreaMm2,
        Material = choice.Conductor.Material,
        Count = choice.Count,
        InsulationCelsius = run.InsulationCelsius,
        MassGrams = choice.KilogramsPerMetre * run.LengthMetres * 1000,
    };

    private FuseResult? FuseOf(RunEnd end)
    {
        if (evaluation.Design.FuseAt(end) is not { } fuse) return null;
        Clearing? worst = sized.Faults.WorstOf(end);
        double amps = OperatingEnvelope.Flowing(evaluation.Envelope.PeakAmps[end.Run]);
        double ohms = fuse.Ohms(evaluation.Design.Conductors[end.Run].Count);
        return new FuseResult
        {
            Decided = fuse.Decided,
            RatingAmps = fuse.RatingAmps,
            Family = fuse.Family.Name,
            DistanceMetres = fuse.DistanceMetres,
            PerConductor = fuse.PerConductor,
            DropVolts = ohms * amps,
            LossWatts = ohms * amps * amps,
            LargestFaultAmps = sized.Faults.LargestAmps.TryGetValue(model.Topology.NodeAt(end), out double largest)
                ? largest
                : null,
            SmallestFaultAmps = worst?.DeviceAmps,
            OpensSeconds = worst?.ClearingSeconds,
            ConductorWithstandSeconds = worst is { } clearing && double.IsFinite(clearing.WithstandSeconds)
                ? clearing.WithstandSeconds
                : null,
        };
    }

    private SizingResult SizingOf() => new()
    {
        Complete = sized.IsComplete,
        MassGrams = variant.ConductorGrams,
        Optimal = sized.IsOptimal,
        Gap = sized.Gap,
        Cost = sized.Cost,
        Currency = new PriceList(build.Stated.Sizing, build.Ruleset).IsStated ? build.Stated.Sizing.Currency : null,
    };
}
