using System.Collections.Frozen;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;

namespace Cablewright.Engine.Heat;

/// <summary>The published ampacities of single copper conductors in free air at 30 °C, 33 CFR 183.425 table 5.</summary>
public static class AmpacityTable
{
    private static readonly AmpacityRow[] Rows = Embedded.Read("Heat/ampacity-table.json", HeatJson.Default.AmpacityRowArray);

    private static readonly FrozenDictionary<int, Column> Columns = Rows
        .GroupBy(row => row.InsulationCelsius)
        .ToFrozenDictionary(group => group.Key, group => new Column(group));

    private static readonly int[] Ratings = [.. Columns.Keys.Order()];

    /// <summary>Where the figures come from.</summary>
    public static string Source => Rows[0].Source;

    /// <summary>The published figures: size, insulation rating in °C, amperes.</summary>
    public static IEnumerable<(ConductorSize Size, int InsulationCelsius, double Amps)> Figures =>
        Rows.Select(row => (ConductorSize.Of(row.Size), row.InsulationCelsius, row.Amps));

    /// <summary>The highest insulation rating that the table knows, °C.</summary>
    public static int HighestRating => Ratings[^1];

    /// <summary>The smallest area that the table knows, mm².</summary>
    public static double SmallestAreaMm2 => Columns[Ratings[0]].SmallestArea;

    /// <summary>The largest area that the table knows, mm².</summary>
    public static double LargestAreaMm2 => Columns[Ratings[0]].LargestArea;

    /// <summary>The column for an insulation rating: its own, or the next lower one.</summary>
    /// <param name="insulationCelsius">60 or more.</param>
    public static int ColumnFor(double insulationCelsius) => Ratings.Last(rating => rating <= insulationCelsius);

    /// <summary>Amperes at 30 °C; between two published sizes along the straight line of the logarithms.</summary>
    /// <param name="areaMm2">Metal area within the table.</param>
    /// <param name="column">An insulation rating of the table.</param>
    public static double Amps(double areaMm2, int column) => Columns[column].At(areaMm2);

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
