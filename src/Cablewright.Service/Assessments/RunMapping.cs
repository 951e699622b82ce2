using Cablewright.Contract.Builds;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Assessments;

/// <summary>From the contract's run to the engine's.</summary>
internal static class RunMapping
{
    /// <summary>The same run in SI units.</summary>
    public static Engine.Builds.Run ToEngine(Run run) => new()
    {
        Id = run.Id,
        From = run.From,
        To = run.To,
        Side = run.Side,
        LengthMetres = Stated<Run>.Read(run.Length, nameof(run.Length)).Value,
        Route = run.Route,
        Conductor = run.Conductor is null ? new Engine.Builds.ConductorWish() : ConductorOf(run.Conductor),
        Fuse = run.Fuse is null ? null : FuseOf(run.Fuse),
        FarFuse = run.FarFuse is null ? null : FuseOf(run.FarFuse),
        EngineBayMetres = Stated<Run>.Value(run.EngineBayLength, nameof(run.EngineBayLength)),
        BundledMetres = Stated<Run>.Value(run.BundledLength, nameof(run.BundledLength)),
        JointOhms = Stated<Run>.Value(run.JointResistance, nameof(run.JointResistance)),
        Isolator = run.Isolator is null ? null : IsolatorOf(run.Isolator),
    };

    private static Engine.Builds.ConductorWish ConductorOf(Conductor conductor) => new()
    {
        Size = StatedSize.Of(conductor.Size),
        IsLabelled = StatedSize.IsLabel(conductor.Size),
        Material = conductor.Material,
        InsulationCelsius = Stated<Conductor>.Value(conductor.InsulationRating, nameof(conductor.InsulationRating)),
        Count = conductor.Count,
    };

    private static Engine.Builds.FuseWish FuseOf(Fuse fuse) => new()
    {
        Fitted = fuse.Fitted ?? true,
        RatingAmps = Stated<Fuse>.Value(fuse.Rating, nameof(fuse.Rating)),
        Family = fuse.Family,
        DistanceMetres = Stated<Fuse>.Value(fuse.DistanceFromSource, nameof(fuse.DistanceFromSource)),
        VoltageRatingVolts = Stated<Fuse>.Value(fuse.VoltageRating, nameof(fuse.VoltageRating)),
        InterruptingRatingAmps = Stated<Fuse>.Value(fuse.InterruptingRating, nameof(fuse.InterruptingRating)),
        PerConductor = fuse.PerConductor,
        LargestConductor = StatedSize.Of(fuse.LargestConductor),
        OpeningTimes = [.. (fuse.OpeningTimes ?? []).Select(OpeningOf)],
    };

    private static Engine.Builds.OpeningTime OpeningOf(OpeningTime point) => new(
        Stated<OpeningTime>.Read(point.ShareOfRating, nameof(point.ShareOfRating)).Value,
        Stated<OpeningTime>.Read(point.Fastest, nameof(point.Fastest)).Value,
        Stated<OpeningTime>.Value(point.Slowest, nameof(point.Slowest)));

    private static Engine.Builds.Isolator IsolatorOf(Isolator isolator) => new()
    {
        Kind = isolator.Kind,
        RatedAmps = Stated<Isolator>.Value(isolator.RatedCurrent, nameof(isolator.RatedCurrent)),
        ContactOhms = Stated<Isolator>.Value(isolator.ContactResistance, nameof(isolator.ContactResistance)),
        ForwardVolts = Stated<Isolator>.Value(isolator.ForwardVoltage, nameof(isolator.ForwardVoltage)),
        OutputVolts = Stated<Isolator>.Value(isolator.OutputVoltage, nameof(isolator.OutputVoltage)),
        Efficiency = Stated<Isolator>.Value(isolator.Efficiency, nameof(isolator.Efficiency)),
    };
}
