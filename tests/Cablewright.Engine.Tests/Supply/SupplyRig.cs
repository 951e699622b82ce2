using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Supply;
using Cablewright.Engine.Tests.Properties;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Tests.Supply;

/// <summary>The supply's circuit of a build in which everything is given, taken out of the assessment.</summary>
internal sealed class SupplyRig
{
    public SupplyRig(Build build)
    {
        Assert.Empty(FaultFinder.Find(build));
        Build = build;
        Complete = BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));
        Model = BuildModel.Of(Complete);
        Envelope = new OperatingPointSolver(Model).Estimate(TwoBatteryBuilds.DesignOf(Complete), []);
        Circuit = new SupplyCircuit(Model, Envelope);
    }

    public Build Build { get; }

    public CompleteBuild Complete { get; }

    public BuildModel Model { get; }

    /// <summary>The currents that say how warm the runs are: not those of the case at hand.</summary>
    public OperatingEnvelope Envelope { get; }

    public SupplyCircuit Circuit { get; }

    public EnergyBalance Balance => new(Model, Envelope);

    /// <summary>The same circuit at the same resistances, with other loads.</summary>
    public SupplyCircuit With(Func<LoadDraw, LoadDraw> change)
    {
        AmplifierDraw[] draws = [.. Complete.Draws.Select(draw => draw with { Full = change(draw.Full) })];
        return new SupplyCircuit(Model with { Build = Complete with { Draws = draws } }, Envelope);
    }
}
