namespace Cablewright.Engine.Rulesets;

/// <summary>Joints, and returns that are chosen.</summary>
internal sealed class RunSection(FigureReader figures)
{
    public Figure JointResistance { get; } = figures.Take("run.joint-resistance", "ohm");

    public Figure ReturnLength { get; } = figures.Take("run.return-length", "m");

    /// <summary>What of a run lies in the engine bay where its route is not stated.</summary>
    public Figure EngineBayLength { get; } = figures.Take("run.engine-bay-length", "m");

    /// <summary>A conductor of copper-clad aluminium is named.</summary>
    public Figure CopperClad { get; } = figures.Take("run.copper-clad", "1");
}
