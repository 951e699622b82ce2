using Cablewright.Engine.Completion;

namespace Cablewright.Engine.Wiring;

/// <summary>A build and what follows from it before anything is decided.</summary>
/// <param name="Build">The build.</param>
/// <param name="Circuit">It as a circuit.</param>
/// <param name="Topology">Its supply side: what is reached from where.</param>
/// <param name="Ampacities">What conductors may carry where its runs lie.</param>
internal sealed record BuildModel(CompleteBuild Build, CircuitModel Circuit, SupplyTopology Topology, Ampacities Ampacities)
{
    /// <summary>The model of a build.</summary>
    public static BuildModel Of(CompleteBuild build)
    {
        var circuit = new CircuitModel(build);
        return new BuildModel(build, circuit, new SupplyTopology(build, circuit), new Ampacities(build));
    }
}
