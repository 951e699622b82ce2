using Cablewright.Engine.Data;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Fuses;

/// <summary>What all fuses of one family have in common, with sources.</summary>
public sealed record FuseFamily(
    FuseFamilyName Name,
    string Standard,
    FuseChoice Choice,
    SourcedNumber RelativePrice,
    SourcedNumbers RatingsAmps,
    SourcedNumber VoltageRatingVolts,
    SourcedNumber ContinuousUseFactor,
    SourcedNumber DropAtRatingVolts,
    IReadOnlyList<InterruptingRating> InterruptingRatings,
    TimeCurrentBand TimeCurrentBand,
    IReadOnlyList<DeratingPoint> TemperatureDerating)
{
    /// <summary>Whether the family is made in this rating.</summary>
    public bool IsMadeIn(double ratingAmps) => RatingsAmps.Values.Contains(ratingAmps);

    /// <summary>The smallest rating that carries a current continuously, or <c>null</c> where the family has none.</summary>
    public double? SmallestCarrying(double amps) => SmallestOfWhich(ContinuousUseFactor.Value, amps);

    /// <summary>The smallest rating that is no less than a current, or <c>null</c> where the family has none.</summary>
    public double? NextRating(double amps) => SmallestOfWhich(1, amps);

    private double? SmallestOfWhich(double share, double reachesAmps)
    {
        foreach (double rating in RatingsAmps.Values)
        {
            if (!Significant.Exceeds(reachesAmps, rating * share)) return rating;
        }

        return null;
    }

    /// <summary>
    /// What it is known to interrupt at a voltage: by the figure for the next voltage up, beyond the last one by that.
    /// </summary>
    public InterruptingRating InterruptingAt(double volts) =>
        InterruptingRatings.FirstOrDefault(rating => !Significant.Exceeds(volts, rating.Volts)) ?? InterruptingRatings[^1];

    /// <summary>What the best of its parts interrupt at a voltage: one made for a higher voltage does as well.</summary>
    public double BestInterruptingAt(double volts) => InterruptingRatings
        .Where(rating => !Significant.Exceeds(volts, rating.Volts)).Append(InterruptingAt(volts)).Max(rating => rating.Amps);

    /// <summary>Whether it is a plug-in fuse (blade).</summary>
    public bool IsPlugIn => Name is FuseFamilyName.BladeC or FuseFamilyName.BladeE or FuseFamilyName.BladeF;

    /// <summary>What is left of its continuous current in hot air.</summary>
    /// <remarks>
    /// Only plug-in fuses have a derating that was read: a blade of 40 A carries 30 A at 85 °C, the margin for continuous use
    /// within that and not on top of it.
    /// </remarks>
    public double HotShareAt(double celsius) =>
        IsPlugIn ? Math.Min(1, DeratingAt(celsius) / ContinuousUseFactor.Value) : 1;

    private double DeratingAt(double celsius)
    {
        if (celsius <= TemperatureDerating[0].Celsius) return TemperatureDerating[0].Share;
        for (int i = 1; i < TemperatureDerating.Count; i++)
        {
            (DeratingPoint from, DeratingPoint to) = (TemperatureDerating[i - 1], TemperatureDerating[i]);
            if (celsius > to.Celsius) continue;
            return from.Share + (celsius - from.Celsius) / (to.Celsius - from.Celsius) * (to.Share - from.Share);
        }

        return TemperatureDerating[^1].Share;
    }

    /// <summary>Resistance of a fuse of this family, hot, from its drop at its rated current, in ohms.</summary>
    public double Ohms(double ratingAmps) => DropAtRatingVolts.Value / ratingAmps;
}
