using System.Collections.Frozen;
using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Rulesets;

/// <summary>The published ampacities of single copper conductors in free air at 30 °C, 33 CFR 183.425 table 5.</summary>
public sealed class AmpacityTable
{
    private readonly AmpacityRow[] rows;
    private readonly FrozenDictionary<int, Column> columns;
    private readonly int[] ratings;

    internal AmpacityTable(AmpacityRow[] rows)
    {
        this.rows = rows;
        columns = rows.GroupBy(row => row.InsulationCelsius).ToFrozenDictionary(group => group.Key, group => new Column(group));
        ratings = [.. columns.Keys.Order()];
    }

    /// <summary>Where the figures come from.</summary>
    public string Source => rows[0].Source;

    /// <summary>The published figures, with their sources.</summary>
    public IReadOnlyList<AmpacityRow> Rows => rows;

    /// <summary>The sizes that the table knows.</summary>
    public IEnumerable<ConductorSize> Sizes => rows.Select(row => ConductorSize.Of(row.Size));

    /// <summary>The insulation ratings that the table knows, the lowest first, °C.</summary>
    public IReadOnlyList<int> Ratings => ratings;

    /// <summary>The highest insulation rating that the table knows, °C.</summary>
    public int HighestRating => ratings[^1];

    /// <summary>The smallest area that the table knows, mm².</summary>
    public double SmallestAreaMm2 => columns[ratings[0]].SmallestArea;

    /// <summary>The largest area that the table knows, mm².</summary>
    public double LargestAreaMm2 => columns[ratings[0]].LargestArea;

    /// <summary>The column for an insulation rating: its own, or the next lower one.</summary>
    /// <param name="insulationCelsius">60 or more.</param>
    public int ColumnFor(double insulationCelsius) => ratings.Last(rating => rating <= insulationCelsius);

    /// <summary>Amperes at 30 °C; between two published sizes along the straight line of the logarithms.</summary>
    /// <param name="areaMm2">Metal area within the table.</param>
    /// <param name="column">An insulation rating of the table.</param>
    public double Amps(double areaMm2, int column) => columns[column].At(areaMm2);

    private sealed class Column
    {
        private readonly double[] areas;
        private readonly double[] amps;

        public Column(IEnumerable<AmpacityRow> rows)
        {
            (double Area, double Amps)[] points =
                [.. rows.Select(row => (ConductorSize.Of(row.Size).MetalAreaMm2, row.Amps)).OrderBy(point => point.MetalAreaMm2)];
            areas = [.. points.Select(point => point.Area)];
            amps = [.. points.Select(point => point.Amps)];
        }

        public double SmallestArea => areas[0];

        public double LargestArea => areas[^1];

        public double At(double area)
        {
            int above = Array.BinarySearch(areas, area);
            if (above >= 0) return amps[above];
            above = Math.Clamp(~above, 1, areas.Length - 1);
            double share = Math.Log(area / areas[above - 1]) / Math.Log(areas[above] / areas[above - 1]);
            return amps[above - 1] * Math.Pow(amps[above] / amps[above - 1], share);
        }
    }
}

/// <summary>One figure of the published ampacity table.</summary>
/// <param name="Size">Conductor size.</param>
/// <param name="InsulationCelsius">Temperature rating of the insulation, in degrees Celsius.</param>
/// <param name="Amps">What copper of this size may carry continuously, in amperes.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record AmpacityRow(string Size, int InsulationCelsius, double Amps, string Source, string Provenance);
