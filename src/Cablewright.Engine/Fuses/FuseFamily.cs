using Cablewright.Engine.Data;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Fuses;

/// <summary>What all fuses of one family have in common, with sources.</summary>
public sealed record FuseFamily(
    FuseFamilyName Name,
    string Standard,
    SourcedNumbers RatingsAmps,
    SourcedNumber VoltageRatingVolts,
    SourcedNumber ContinuousUseFactor,
    SourcedNumber DropAtRatingVolts,
    SourcedNumber InterruptingRatingAmps,
    TimeCurrentBand TimeCurrentBand,
    IReadOnlyList<DeratingPoint> TemperatureDerating)
{
    private static readonly FuseFamily[] Table =
        [.. Embedded.Read("Fuses/fuse-families.json", FusesJson.Default.FuseFamilyRowArray)
            .Select(row => new FuseFamily(
                TradeWords.Parse<FuseFamilyName>(row.Name),
                row.Standard,
                row.RatingsAmps,
                row.VoltageRatingVolts,
                row.ContinuousUseFactor,
                row.DropAtRatingVolts,
                row.InterruptingRatingAmps,
                new TimeCurrentBand(row.TimeCurrentBand),
                row.TemperatureDerating))
            .OrderBy(family => family.Name)];

    /// <summary>All families.</summary>
    public static IReadOnlyList<FuseFamily> All => Table;

    /// <summary>One family.</summary>
    public static FuseFamily Of(FuseFamilyName name) => Table[(int)name];

    /// <summary>Whether the family is made in this rating.</summary>
    public bool IsMadeIn(double ratingAmps) => RatingsAmps.Values.Contains(ratingAmps);

    /// <summary>
    /// The family that a plain rating means where none is named: a blade where blades are made in it, else an ANL.
    /// </summary>
    public static FuseFamily UsualFor(double ratingAmps) =>
        Of(FuseFamilyName.BladeC).IsMadeIn(ratingAmps) ? Of(FuseFamilyName.BladeC) : Of(FuseFamilyName.Anl);

    /// <summary>The smallest rating that carries a current continuously, or <c>null</c> where the family has none.</summary>
    public double? SmallestCarrying(double amps)
    {
        foreach (double rating in RatingsAmps.Values)
        {
            if (!Significant.Exceeds(amps, rating * ContinuousUseFactor.Value)) return rating;
        }

        return null;
    }

    /// <summary>What is left of its continuous current in hot air, straight between the points of its derating.</summary>
    public double HotShareAt(double celsius)
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

    /// <summary>Resistance of a fuse of this family, from its permitted drop at its rated current, in ohms.</summary>
    public double Ohms(double ratingAmps) => DropAtRatingVolts.Value / ratingAmps;
}

internal sealed record FuseFamilyRow(
    string Name,
    string Standard,
    SourcedNumbers RatingsAmps,
    SourcedNumber VoltageRatingVolts,
    SourcedNumber ContinuousUseFactor,
    SourcedNumber DropAtRatingVolts,
    SourcedNumber InterruptingRatingAmps,
    IReadOnlyList<TimeCurrentPoint> TimeCurrentBand,
    IReadOnlyList<DeratingPoint> TemperatureDerating);
