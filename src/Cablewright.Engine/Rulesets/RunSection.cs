namespace Cablewright.Engine.Rulesets;

/// <summary>Joints, and returns that are chosen.</summary>
internal sealed class RunSection(FigureReader figures)
{
    public Figure JointResistance { get; } = figures.Take("run.joint-resistance", "ohm");

    public Figure ReturnLength { get; } = figures.Take("run.return-length", "m");
}
