using Cablewright.Engine.Conductors;
using Cablewright.Engine.Data;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Reference;

/// <summary>Figures behind the computation that stand in no table of their own, for whoever wants to check them.</summary>
public static class ReferenceTables
{
    /// <summary>Single figures: stranding, heat balance, short circuit and the walls of insulation.</summary>
    public static IReadOnlyList<NamedFigure> Figures { get; } =
        [.. Embedded.Read("Conductors/stranding.json", DataJson.Default.NamedFigureArray),
            .. Embedded.Read("Heat/heat-balance.json", DataJson.Default.NamedFigureArray),
            .. RulesetLibrary.Newest.ShortCircuit.Figures,
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
