using Cablewright.Vocabulary;

namespace Cablewright.Engine.Fuses;

/// <summary>A fuse that stands at the end of a run.</summary>
/// <param name="Decided">Given or chosen.</param>
/// <param name="RatingAmps">Rated current.</param>
/// <param name="Family">Its family.</param>
/// <param name="DistanceMetres">Conductor between the end of the run and the fuse.</param>
/// <param name="PerConductor">Each of the run's parallel conductors has one.</param>
/// <param name="VoltageRatingVolts">Voltage rating of the part or its family.</param>
/// <param name="InterruptingRatingAmps">Interrupting rating of the part, where it is stated.</param>
internal sealed record FittedFuse(
    Decided Decided, double RatingAmps, FuseFamily Family, double DistanceMetres, bool PerConductor, double VoltageRatingVolts,
    double? InterruptingRatingAmps)
{
    /// <summary>Its own time-current band, where that is stated, else its family's.</summary>
    public TimeCurrentBand Band { get; init; } = Family.TimeCurrentBand;

    /// <summary>What is left of its continuous current in the air where it stands.</summary>
    public double HotShare { get; init; } = 1;

    /// <summary>The voltage at which it interrupts: the highest of the system, or the part's own where that is stated.</summary>
    public double InterruptsAtVolts { get; init; }

    /// <summary>Resistance of the terminations that it adds to a conductor.</summary>
    public double TerminationOhms { get; init; }

    /// <summary>What passes before all of them open.</summary>
    public double TotalRatingAmps(int conductors) => PerConductor ? RatingAmps * conductors : RatingAmps;

    /// <summary>What is known of the current that its family can interrupt.</summary>
    public InterruptingRating FamilyInterrupts => Family.InterruptingAt(InterruptsAtVolts);

    /// <summary>What is known of the current that it can interrupt.</summary>
    public double InterruptsAmps => InterruptingRatingAmps ?? FamilyInterrupts.Amps;

    /// <summary>The continuous current that they carry together.</summary>
    public double ContinuousAmps(int conductors) => TotalRatingAmps(conductors) * Family.ContinuousUseFactor.Value;

    /// <summary>Resistance of all of them together, terminations included.</summary>
    public double Ohms(int conductors) => (Family.Ohms(RatingAmps) + TerminationOhms) / (PerConductor ? conductors : 1);
}
