using System.Collections.Frozen;
using System.Globalization;
using Cablewright.Engine.Data;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Conductors;

/// <summary>
/// A size as the trade writes it on the cable: an American Wire Gauge number (22 to 4/0, ASTM B258) or a nominal metric area
/// (0.5 to 150 mm², IEC 60228 class 5 and the automotive sizes between). There is one object for each size.
/// </summary>
public sealed class ConductorSize
{
    private static readonly ConductorSize[] SmallestFirst =
        [.. AmericanSizes().Concat(MetricSizes()).OrderBy(size => size.MetalAreaMm2)
            .ThenBy(size => size.Label, StringComparer.Ordinal)];

    private static readonly FrozenDictionary<string, ConductorSize> ByLabel =
        SmallestFirst.ToFrozenDictionary(size => size.Label, StringComparer.Ordinal);

    private ConductorSize(string label, bool isMetric, double nominalAreaMm2, double metalAreaMm2, MetricSizeRow? metric)
    {
        Label = label;
        IsMetric = isMetric;
        NominalAreaMm2 = nominalAreaMm2;
        MetalAreaMm2 = metalAreaMm2;
        Metric = metric;
    }

    /// <summary>Every size, the least metal first.</summary>
    public static IReadOnlyList<ConductorSize> All => SmallestFirst;

    /// <summary>The size in writing: <c>4 AWG</c>, <c>1/0 AWG</c>, <c>25 mm2</c>.</summary>
    public string Label { get; }

    /// <summary>Whether the label is a metric area.</summary>
    public bool IsMetric { get; }

    /// <summary>The area that the label stands for, in mm².</summary>
    public double NominalAreaMm2 { get; }

    /// <summary>
    /// The metal that is certain to be there, in mm²: the true area for AWG, and for a metric size what its largest permitted
    /// resistance allows, since nominal areas are labels (25 mm² may hold 22.5 mm² of copper).
    /// </summary>
    public double MetalAreaMm2 { get; }

    internal MetricSizeRow? Metric { get; }

    /// <summary>Reads a size as the trade writes it.</summary>
    /// <param name="text">Such as <c>4 AWG</c>, <c>4AWG</c>, <c>AWG 4</c>, <c>0 AWG</c>, <c>2/0 AWG</c>, <c>00 AWG</c>,
    /// <c>25 mm2</c>, <c>25 mm²</c>, <c>2.5 sq mm</c>; <c>4 gauge</c>, <c>4 ga</c>, <c>1/0</c> as labels say.</param>
    /// <returns>The size, or what is wrong with the text.</returns>
    public static SizeReading Parse(string text) => SizeText.Parse(text, ByLabel);

    /// <summary>The size with exactly this label.</summary>
    /// <exception cref="KeyNotFoundException">There is no such size.</exception>
    public static ConductorSize Of(string label) => ByLabel[label];

    /// <summary>The size of a gauge number, 22 to −3; 0 is 1/0.</summary>
    public static ConductorSize OfGauge(int number) => Of(LabelOf(number));

    /// <summary>Whether a terminal made for another size accepts this one, by the areas that their labels stand for.</summary>
    public bool FitsWhere(ConductorSize largest) => NominalAreaMm2 <= largest.NominalAreaMm2;

    /// <summary>Whether this size holds more metal than another.</summary>
    public bool IsLargerThan(ConductorSize other) => MetalAreaMm2 > other.MetalAreaMm2;

    /// <inheritdoc/>
    public override string ToString() => Label;

    private static IEnumerable<ConductorSize> AmericanSizes()
    {
        for (int number = 22; number >= -3; number--)
        {
            double diameterMm = 0.127 * Math.Pow(92, (36 - number) / 39.0);
            double areaMm2 = Math.PI / 4 * diameterMm * diameterMm;
            yield return new ConductorSize(LabelOf(number), false, areaMm2, areaMm2, null);
        }
    }

    private static string LabelOf(int number) =>
        number > 0 ? $"{number.ToString(CultureInfo.InvariantCulture)} AWG" : $"{1 - number}/0 AWG";

    private static IEnumerable<ConductorSize> MetricSizes()
    {
        MaterialProperties copper = MaterialProperties.Of(Material.Copper);
        foreach (MetricSizeRow row in Embedded.Read("Conductors/metric-sizes.json", ConductorsJson.Default.MetricSizeRowArray))
        {
            double metal = copper.ResistivityOhmMm2PerMetre * Stranding.LayFactor / (row.PlainMaxOhmsPerKilometre / 1000);
            string label = row.NominalMm2.ToString(CultureInfo.InvariantCulture) + " mm2";
            yield return new ConductorSize(label, true, row.NominalMm2, metal, row);
        }
    }
}

internal sealed record MetricSizeRow(
    double NominalMm2, double PlainMaxOhmsPerKilometre, double TinnedMaxOhmsPerKilometre, string Source, string Provenance);
