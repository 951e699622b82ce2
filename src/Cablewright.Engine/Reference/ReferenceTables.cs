using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Heat;

namespace Cablewright.Engine.Reference;

/// <summary>One figure of the published ampacity table.</summary>
/// <param name="Size">Conductor size.</param>
/// <param name="InsulationCelsius">Temperature rating of the insulation, in degrees Celsius.</param>
/// <param name="Amps">What copper of this size may carry continuously, in amperes.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record PublishedAmpacity(string Size, double InsulationCelsius, double Amps, string Source, string Provenance);

/// <summary>The data behind the computation that no ruleset carries, for whoever wants to check it.</summary>
public static class ReferenceTables
{
    /// <summary>The published ampacity table of copper.</summary>
    public static IReadOnlyList<PublishedAmpacity> Ampacity { get; } =
        [.. Embedded.Read("Heat/ampacity-table.json", HeatJson.Default.AmpacityRowArray)
            .Select(row => new PublishedAmpacity(row.Size, row.InsulationCelsius, row.Amps, row.Source, row.Provenance))];

    /// <summary>Single figures: stranding, heat balance, short circuit and the walls of insulation.</summary>
    public static IReadOnlyList<NamedFigure> Figures { get; } =
        [.. Embedded.Read("Conductors/stranding.json", DataJson.Default.NamedFigureArray),
            .. Embedded.Read("Heat/heat-balance.json", DataJson.Default.NamedFigureArray),
            .. Embedded.Read("Heat/short-circuit.json", DataJson.Default.NamedFigureArray),
            .. Embedded.Read("Heat/insulation-walls.json", HeatJson.Default.WallRowArray).Select(Wall)];

    /// <summary>Where the area and resistance of a size come from, and how they were come by.</summary>
    public static (string Source, string Provenance) SourceOf(ConductorSize size) => size.Metric is { } metric
        ? (metric.Source, metric.Provenance)
        : ("ASTM B258: diameter 0.127 mm x 92^((36 - n)/39)", "computed");

    private static NamedFigure Wall(WallRow row) => new(
        FormattableString.Invariant($"insulation-wall-up-to-{row.UpToMm2}-mm2"),
        row.WallMillimetres,
        "mm",
        FormattableString.Invariant($"wall of insulation on conductors up to {row.UpToMm2} mm2"),
        row.Source,
        row.Provenance);
}
