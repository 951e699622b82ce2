using Cablewright.Engine.Data;

namespace Cablewright.Engine.Conductors;

/// <summary>What stranding does to a conductor: its wires run a longer way round, and leave gaps between them.</summary>
internal static class Stranding
{
    private static readonly NamedFigure[] Figures = Embedded.Read("Conductors/stranding.json", DataJson.Default.NamedFigureArray);

    /// <summary>Resistance and mass of a stranded conductor over a solid one of the same metal area.</summary>
    public static double LayFactor { get; } = Figures.Named("lay-factor");

    /// <summary>Metal area over the area of the circle around the strands.</summary>
    public static double Fill { get; } = Figures.Named("fill");
}
