namespace Cablewright.Engine.Rulesets;

/// <summary>What fits a terminal.</summary>
internal sealed class TerminalSection(FigureReader figures)
{
    public Figure LargestConductor { get; } = figures.Take("terminal.largest-conductor", "1");

    /// <summary>Below this output an amplifier counts as small.</summary>
    public Figure SmallAmplifier { get; } = figures.Take("terminal.small-amplifier", "W");

    /// <summary>The largest gauge that an amplifier's terminals usually take.</summary>
    /// <param name="outputWatts">Its rated output, where it is known.</param>
    public Figure UsualGauge(double? outputWatts) => outputWatts < SmallAmplifier.Value ? SmallGauge : LargeGauge;

    private Figure LargeGauge { get; } = figures.Take("terminal.usual-gauge", "AWG");

    private Figure SmallGauge { get; } = figures.Take("terminal.usual-gauge-small", "AWG");
}
