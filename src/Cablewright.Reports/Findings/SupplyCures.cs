using Cablewright.Engine.Completion;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Supply;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>
/// What would cure a supply that is too small: amperes of alternator or ampere-hours of battery, each worked out.
/// </summary>
internal sealed class SupplyCures(CompleteBuild build, SupplyReport report)
{
    private const double MinutesPerHour = 60;
    private readonly EnergyBalance balance = report.Balance;

    /// <summary>A charger for the average draw, or a battery for the time that a ride takes.</summary>
    public string ForAverage(double givenAmps)
    {
        double needed = balance.AverageAmps + build.Supply.BaseLoadAmps;
        string charger = build.Supply.IsConverter
            ? $"a converter of {Phrase.Amps(needed)}, which is the vehicle maker's to say"
            : $"{Phrase.Amps(needed * build.Supply.RatedAmps!.Value / build.Supply.HotAmps!.Value)} of rated alternator current";
        return $"{charger}; or less power; or, {Battery(balance.Main, balance.DeficitOf(balance.Main, givenAmps))}";
    }

    /// <summary>An alternator whose output at idle covers the average draw.</summary>
    public string ForIdle()
    {
        double needed = balance.AverageAmps + build.Supply.BaseLoadAmps;
        return $"an alternator that gives {Phrase.Amps(needed)} at idle"
            + (build.Supply.IdleAmps is > 0 and { } idle
                ? $" (with the same curve, {Phrase.Amps(build.Supply.RatedAmps!.Value * needed / idle)} of rated current)"
                : "");
    }

    /// <summary>What holds the voltage at full output.</summary>
    public string ForPeak()
    {
        double needed = balance.PeakAmps + build.Supply.BaseLoadAmps;
        string charger = build.Supply.IsConverter
            ? "less power"
            : $"{Phrase.Amps(needed * build.Supply.RatedAmps!.Value / build.Supply.HotAmps!.Value)} of rated alternator current";
        return $"{charger}, a battery of lower resistance near the amplifiers, or less power; music that seldom reaches full "
            + "output suffers less";
    }

    /// <summary>A battery for a time.</summary>
    public string ForEngineOff(SupplyGroup group, double minutes) => Battery(group, balance.EngineOffAmps(group), minutes);

    /// <summary>
    /// The engine speed from which the alternator covers the average draw; <c>null</c> where it never does or its curve is not
    /// known.
    /// </summary>
    public double? CoveredFromRpm
    {
        get
        {
            double needed = balance.AverageAmps + build.Supply.BaseLoadAmps;
            if (build.Supply.HotCurve is not { } curve || needed > build.Supply.HotAmps) return null;
            return needed <= build.Supply.IdleAmps ? build.Supply.IdleRpm : curve.RpmFor(needed) / build.Supply.PulleyRatio;
        }
    }

    private string Battery(SupplyGroup group, double amps, double? minutes = null)
    {
        double wished = minutes ?? build.Ruleset.Supply.WishedMinutes.Value;
        CompleteBattery like = build.Batteries[group.Batteries[0]];
        double usable = build.Ruleset.Supply.Usable(like.Chemistry).Value;
        Peukert.Cell fresh = like.Energy with { Share = Math.Max(like.Energy.Share, usable) };
        double missing = Peukert.MissingAmpHours(group.CellsOf(build), fresh, amps, wished / MinutesPerHour);
        return missing <= 0
            ? $"as it is, the batteries last {Phrase.Minutes(wished)}"
            : $"to last {Phrase.Minutes(wished)}, {Phrase.Number(missing)} Ah more of battery ({like.Chemistry.Word()})";
    }
}
