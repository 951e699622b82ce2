using Cablewright.Engine.Data;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Fuses;

/// <summary>The fuse families of a ruleset, one of each name.</summary>
public sealed class FuseFamilies
{
    private readonly FuseFamily[] byName;

    /// <exception cref="InvalidDataException">A family is missing, or stands there twice.</exception>
    internal FuseFamilies(IEnumerable<FuseFamilyRow> rows)
    {
        byName =
            [.. rows.Select(row => new FuseFamily(
                    TradeWords.Parse<FuseFamilyName>(row.Name),
                    row.Standard,
                    row.Choice,
                    row.RelativePrice,
                    row.RatingsAmps,
                    row.VoltageRatingVolts,
                    row.ContinuousUseFactor,
                    row.DropAtRatingVolts,
                    row.InterruptingRatings,
                    new TimeCurrentBand(row.TimeCurrentBand, row.BandUncertainty, row.ArcingSeconds),
                    row.TemperatureDerating))
                .OrderBy(family => family.Name)];
        if (!byName.Select(family => family.Name).SequenceEqual(Enum.GetValues<FuseFamilyName>()))
            throw new InvalidDataException("The fuse families: one is missing, or stands there twice.");
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<FuseFamily> All => byName;

    /// <summary>All of them, in the order in which one is chosen.</summary>
    public IEnumerable<FuseFamily> InOrderOfChoice => byName.OrderBy(family => family.Choice.Order);

    /// <summary>One family.</summary>
    public FuseFamily Of(FuseFamilyName name) => byName[(int)name];

    /// <summary>
    /// The family that a plain rating means where none is named: a blade where blades are made in it, else an ANL.
    /// </summary>
    public FuseFamily UsualFor(double ratingAmps) =>
        Of(FuseFamilyName.BladeC).IsMadeIn(ratingAmps) ? Of(FuseFamilyName.BladeC) : Of(FuseFamilyName.Anl);
}

internal sealed record FuseFamilyRow(
    string Name,
    string Standard,
    FuseChoice Choice,
    SourcedNumber RelativePrice,
    SourcedNumbers RatingsAmps,
    SourcedNumber VoltageRatingVolts,
    SourcedNumber ContinuousUseFactor,
    SourcedNumber DropAtRatingVolts,
    IReadOnlyList<InterruptingRating> InterruptingRatings,
    IReadOnlyList<TimeCurrentPoint> TimeCurrentBand,
    SourcedNumber BandUncertainty,
    SourcedNumber ArcingSeconds,
    IReadOnlyList<DeratingPoint> TemperatureDerating);
