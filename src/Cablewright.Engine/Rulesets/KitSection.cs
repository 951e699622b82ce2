namespace Cablewright.Engine.Rulesets;

/// <summary>What a kit must hold.</summary>
internal sealed class KitSection(FigureReader figures)
{
    public Figure Complete { get; } = figures.Take("kit.complete", "1");

    public Figure WireBears { get; } = figures.Take("kit.wire-bears", "1");

    public Figure ColoursDiffer { get; } = figures.Take("kit.colours-differ", "1");

    public Figure GoodInsulation { get; } = figures.Take("kit.good-insulation", "C");

    public Figure SignalLength { get; } = figures.Take("kit.signal-length", "m");
}
