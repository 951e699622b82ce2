using Cablewright.Contract.Assessments;
using static Cablewright.Service.Assessments.AssessmentMapping;

namespace Cablewright.Service.Assessments;

/// <summary>From the engine's figures of a run to the contract's.</summary>
internal static class RunAnswerMapping
{
    /// <summary>The figures of one run.</summary>
    public static RunResult ToContract(Engine.Results.RunResult run) => new()
    {
        Id = run.Id,
        Side = run.Side,
        From = run.From,
        To = run.To,
        LengthMetres = Shown(run.LengthMetres),
        Route = run.Route,
        Conductor = ConductorOf(run.Conductor),
        PeakCurrentAmps = Shown(run.PeakCurrentAmps),
        ThermalCurrentAmps = Shown(run.ThermalCurrentAmps),
        ResistanceMilliohms = Shown(run.ResistanceMilliohms),
        DropVolts = Shown(run.DropVolts),
        LossWatts = Shown(run.LossWatts),
        TemperatureCelsius = Shown(run.TemperatureCelsius),
        AmpacityAmps = Shown(run.AmpacityAmps),
        AmpacityTableAmps = Shown(run.AmpacityTableAmps),
        AmpacityHeatBalanceAmps = Shown(run.AmpacityHeatBalanceAmps),
        Utilisation = Shown(run.Utilisation),
        GuardedBy = run.ProtectedBy,
        Fuse = FuseOf(run.Fuse),
        FarFuse = FuseOf(run.FarFuse),
        Isolator = IsolatorOf(run.Isolator),
        Alternatives = run.Alternatives is { } alternatives ? [.. alternatives.Select(VariationMapping.AlternativeOf)] : null,
    };

    private static ConductorResult ConductorOf(Engine.Results.ConductorResult conductor) => new()
    {
        Decided = conductor.Decided,
        Size = conductor.Size.Label,
        AreaMm2 = Shown(conductor.Size.MetalAreaMm2),
        Material = conductor.Material,
        Count = conductor.Count,
        InsulationCelsius = Shown(conductor.InsulationCelsius),
        MassGrams = Shown(conductor.MassGrams),
    };

    private static FuseResult? FuseOf(Engine.Results.FuseResult? fuse) => fuse is null ? null : new FuseResult
    {
        Decided = fuse.Decided,
        RatingAmps = Shown(fuse.RatingAmps),
        Family = fuse.Family,
        DistanceMetres = Shown(fuse.DistanceMetres),
        PerConductor = fuse.PerConductor,
        DropVolts = Shown(fuse.DropVolts),
        LossWatts = Shown(fuse.LossWatts),
        LargestFaultAmps = Shown(fuse.LargestFaultAmps),
        SmallestFaultAmps = Shown(fuse.SmallestFaultAmps),
        OpensSeconds = Shown(fuse.ClearingSeconds),
        ConductorWithstandSeconds = Shown(fuse.ConductorWithstandSeconds),
    };

    /// <summary>What parts the batteries on a run, where something does.</summary>
    public static IsolatorResult? IsolatorOf(Engine.Results.IsolatorResult? isolator) =>
        isolator is null ? null : new IsolatorResult
        {
            Kind = isolator.Kind,
            RatedAmps = Shown(isolator.RatedAmps),
            ThroughAmps = Shown(isolator.ThroughAmps),
            LossVolts = Shown(isolator.LossVolts),
        };
}
