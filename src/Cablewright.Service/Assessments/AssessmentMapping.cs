using Cablewright.Contract.Assessments;
using Cablewright.Engine;
using Cablewright.Engine.Numerics;

namespace Cablewright.Service.Assessments;

/// <summary>From the engine's assessment to the contract's; numbers at six significant digits.</summary>
internal static class AssessmentMapping
{
    /// <summary>The answer to a build.</summary>
    public static Assessment ToContract(Engine.Results.Assessment assessment, string id) => new()
    {
        Id = id,
        Verdict = assessment.Verdict,
        Summary = assessment.Summary,
        Ruleset = assessment.Ruleset,
        EngineVersion = Assessor.EngineVersion,
        Assumptions = [.. assessment.Assumptions.Select(AssumptionOf)],
        AskNext = [.. assessment.AskNext.Select(question => new FollowUp
        {
            Pointer = question.Pointer,
            Question = question.Text,
            Why = question.Why,
        })],
        Supply = SupplyAnswerMapping.ToContract(assessment.Supply),
        Amplifiers = [.. assessment.Amplifiers.Select(AmplifierOf)],
        Runs = [.. assessment.Runs.Select(RunAnswerMapping.ToContract)],
        Findings = [.. assessment.Findings.Select(FindingOf)],
        Sizing = VariationMapping.SizingOf(assessment.Sizing),
        Feasibility = FeasibilityMapping.ToContract(assessment.Feasibility),
        Headroom = VariationMapping.HeadroomOf(assessment.Headroom),
        Robustness = VariationMapping.RobustnessOf(assessment.Robustness),
        LeftOut = assessment.LeftOut.Count == 0 ? null : [.. assessment.LeftOut.Select(part => part)],
        Materials = [.. assessment.Materials.Select(MaterialOf)],
        MaterialCost = assessment.MaterialCost is not { } cost ? null : new MaterialCost
        {
            Price = Shown(cost.Price),
            Currency = cost.Currency,
            UnpricedLines = cost.UnpricedLines,
        },
        SafetyNotes = assessment.SafetyNotes,
    };

    /// <summary>A number as an answer shows it: six significant digits, and no zero below zero.</summary>
    public static double Shown(double value) => Significant.Round(value) + 0.0;

    /// <summary>The same, where there is one.</summary>
    public static double? Shown(double? value) => value is { } number ? Shown(number) : null;

    /// <summary>A value that was not stated.</summary>
    public static Assumption AssumptionOf(Engine.Completion.Assumption assumption) => new()
    {
        Pointer = assumption.Pointer,
        Value = assumption.Value,
        Reason = assumption.Reason,
        Source = assumption.Source,
    };

    private static AmplifierResult AmplifierOf(Engine.Results.AmplifierResult amplifier) => new()
    {
        Id = amplifier.Id,
        PeakCurrentAmps = Shown(amplifier.PeakCurrentAmps),
        ThermalCurrentAmps = Shown(amplifier.ThermalCurrentAmps),
        TerminalVolts = Shown(amplifier.TerminalVolts),
        DropVolts = Shown(amplifier.DropVolts),
        DropPercent = Shown(amplifier.DropPercent),
        LostInWireWatts = Shown(amplifier.LostInWireWatts),
        OutputShortfallWatts = Shown(amplifier.OutputShortfallWatts),
    };

    /// <summary>One thing that was found.</summary>
    public static Finding FindingOf(Engine.Results.Finding finding) => new()
    {
        Code = finding.Code,
        Severity = finding.Severity,
        Pointer = finding.Pointer,
        Message = finding.Message,
        Measured = Shown(finding.Measured),
        Limit = Shown(finding.Limit),
        Unit = finding.Unit,
        Rule = finding.Rule,
        Source = finding.Source,
        Remedy = finding.Remedy,
        Workings = finding.Workings,
    };

    /// <summary>One line of what a job needs.</summary>
    public static MaterialLine MaterialOf(Engine.Results.MaterialLine line) => new()
    {
        ItemName = line.Item,
        Size = line.Size?.Label,
        Material = line.Material,
        LengthMetres = Shown(line.LengthMetres),
        CutLengthMetres = Shown(line.CutLengthMetres),
        RatingAmps = Shown(line.RatingAmps),
        Family = line.Family,
        Count = line.Count,
        Price = Shown(line.Price),
        Currency = line.Price is null ? null : line.Currency,
    };
}
