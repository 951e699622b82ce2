using Cablewright.Engine.Completion;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Supply;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>
/// What would cure a supply that is too small: amperes of alternator or ampere-hours of battery, each worked out.
/// </summary>
internal sealed class SupplyCures(CompleteBuild build, SupplyReport report)
{
    private const double MinutesPerHour = 60;
    private readonly EnergyBalance balance = report.Balance;
    private readonly Speech speech = build.Speech;

    /// <summary>A charger for the average draw, or a battery for the time that a ride takes.</summary>
    public string ForAverage(double givenAmps)
    {
        Params values = Charger(balance.AverageAmps).And(new Params
        {
            ["battery"] = Battery(balance.Main, balance.DeficitOf(balance.Main, givenAmps)),
        });
        return speech.Text("remedy.supply.average-above-alternator" + Kind, values);
    }

    /// <summary>An alternator whose output at idle covers the average draw.</summary>
    public string ForIdle()
    {
        double needed = balance.AverageAmps + build.Supply.BaseLoadAmps;
        return build.Supply.IdleAmps is > 0 and { } idle
            ? speech.Text("remedy.supply.average-above-idle.rated", new Params
            {
                ["neededAmps"] = needed,
                ["ratedAmps"] = build.Supply.RatedAmps!.Value * needed / idle,
            })
            : speech.Text("remedy.supply.average-above-idle", new Params { ["neededAmps"] = needed });
    }

    /// <summary>What holds the voltage at full output.</summary>
    public string ForPeak() => speech.Text("remedy.supply.peak" + Kind, Charger(balance.PeakAmps));

    /// <summary>A battery for a time, or less power.</summary>
    public string ForEngineOff(SupplyGroup group, double minutes) => speech.Text(
        "remedy.supply.engine-off-too-short",
        new Params { ["battery"] = Battery(group, balance.EngineOffAmps(group), minutes) });

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

    private string Kind => build.Supply.IsConverter ? ".converter" : "";

    /// <summary>What has to charge for a draw: a converter's current, or an alternator's rated one.</summary>
    private Params Charger(double drawnAmps)
    {
        double needed = drawnAmps + build.Supply.BaseLoadAmps;
        return build.Supply.IsConverter
            ? new Params { ["neededAmps"] = needed }
            : new Params { ["ratedAmps"] = needed * build.Supply.RatedAmps!.Value / build.Supply.HotAmps!.Value };
    }

    private string Battery(SupplyGroup group, double amps, double? minutes = null)
    {
        double wished = minutes ?? build.Ruleset.Supply.WishedMinutes.Value;
        CompleteBattery like = build.Batteries[group.Batteries[0]];
        double usable = build.Ruleset.Supply.Usable(like.Chemistry).Value;
        Peukert.Cell fresh = like.Energy with { Share = Math.Max(like.Energy.Share, usable) };
        double missing = Peukert.MissingAmpHours(group.CellsOf(build), fresh, amps, wished / MinutesPerHour);
        return missing <= 0
            ? speech.Text("remedy.battery.lasts", new Params { ["minutes"] = wished })
            : speech.Text("remedy.battery.more", new Params
            {
                ["minutes"] = wished,
                ["moreAmpHours"] = missing,
                ["chemistry"] = like.Chemistry.Word(),
            });
    }
}
