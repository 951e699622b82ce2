using Cablewright.Contract.Assessments;
using Cablewright.Engine.Results;
using static Cablewright.Service.Assessments.AssessmentMapping;
using SizingResult = Cablewright.Contract.Assessments.SizingResult;
using TradeOffChoice = Cablewright.Contract.Assessments.TradeOffChoice;
using TradeOffPoint = Cablewright.Contract.Assessments.TradeOffPoint;

namespace Cablewright.Service.Assessments;

/// <summary>From the engine's figures of what would be otherwise, and of how the choice was made, to the contract's.</summary>
internal static class VariationMapping
{
    /// <summary>How the choice was made.</summary>
    public static SizingResult? SizingOf(Engine.Results.SizingResult? sizing) => sizing is null ? null : new SizingResult
    {
        Complete = sizing.Complete,
        Optimal = sizing.Optimal,
        Gap = Shown(sizing.Gap),
        Cost = Shown(sizing.Cost),
        Currency = sizing.Currency,
        MassGrams = Shown(sizing.MassGrams),
        Frontier = sizing.Frontier is { } frontier ? [.. frontier.Select(PointOf)] : null,
    };

    /// <summary>By how much all amplifiers could be larger.</summary>
    public static Headroom? HeadroomOf(HeadroomResult? headroom) => headroom is null ? null : new Headroom
    {
        RatedOutputFactor = Shown(headroom.RatedOutputFactor),
        LimitedBy = headroom.LimitedBy,
        At = headroom.At,
    };

    /// <summary>What becomes of the verdict when things are a little off.</summary>
    public static Robustness? RobustnessOf(RobustnessResult? robustness) => robustness is null ? null : new Robustness
    {
        VerdictAcrossTolerances = robustness.VerdictAcrossTolerances,
        TippedBy = robustness.TippedBy,
        TipsInto = robustness.TipsInto,
    };

    /// <summary>A run with another conductor.</summary>
    public static Alternative AlternativeOf(AlternativeResult alternative) => new()
    {
        Conductor = new AlternativeConductor
        {
            Size = alternative.Size.Label,
            Material = alternative.Material,
            Count = alternative.Count,
        },
        DropVolts = Shown(alternative.DropVolts),
        LossWatts = Shown(alternative.LossWatts),
        TemperatureCelsius = Shown(alternative.TemperatureCelsius),
        Utilisation = Shown(alternative.Utilisation),
        Verdict = alternative.Verdict,
        Cost = Shown(alternative.Cost),
        MassGrams = Shown(alternative.MassGrams),
    };

    private static TradeOffPoint PointOf(Engine.Results.TradeOffPoint point) => new()
    {
        Cost = Shown(point.Cost),
        WorstDropPercent = Shown(point.WorstDropPercent),
        Choices = [.. point.Choices.Select(choice => new TradeOffChoice
        {
            Run = choice.Run,
            Size = choice.Size.Label,
            Material = choice.Material,
            Count = choice.Count,
        })],
    };
}
