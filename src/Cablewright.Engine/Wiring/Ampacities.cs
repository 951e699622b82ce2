using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Wiring;

/// <summary>The ampacities of a build's runs, each worked out once.</summary>
internal sealed class Ampacities(CompleteBuild build)
{
    private readonly Dictionary<(Conductor Conductor, double Insulation, double Air, double Bundling), AmpacityFigures> known =
        [];

    private readonly Conductor leastStrap = Conductor.Of(LeastStrap(build.Ruleset), Material.Copper);

    /// <summary>What one conductor of a run may carry.</summary>
    public AmpacityFigures Of(int run, Conductor conductor)
    {
        CompleteRun described = build.Runs[run];
        return Of(conductor, described.InsulationCelsius, described.AirCelsius, described.Bundling);
    }

    private AmpacityFigures Of(Conductor conductor, double insulation, double air, double bundling)
    {
        (Conductor, double, double, double) key = (conductor, insulation, air, bundling);
        if (!known.TryGetValue(key, out AmpacityFigures figures))
        {
            figures = Ampacity.Of(conductor, insulation, air, bundling, build.Ruleset);
            known.Add(key, figures);
        }

        return figures;
    }

    /// <summary>The least size of a battery's own strap.</summary>
    public static ConductorSize LeastStrap(Ruleset ruleset) => ConductorSize.All
        .First(size => size.IsMetric && size.NominalAreaMm2 >= ruleset.Return.LeastStrap.Value);

    /// <summary>What the strap that is assumed for a battery may carry: of the least size, where the battery stands.</summary>
    public double OfAssumedStrap(int battery)
    {
        Route place = battery == build.ChargingBattery ? Route.EngineBay : Route.Cabin;
        double air = Surroundings.Celsius(place, build.Stated.Limits, build.Ruleset);
        return Of(leastStrap, build.Ruleset.Return.StrapInsulation.Value, air, 1).LimitAmps;
    }

    /// <summary>What all conductors of a run may carry together.</summary>
    public double OfAll(int run, ConductorChoice choice) => Of(run, choice.Conductor).LimitAmps * choice.Count;
}
