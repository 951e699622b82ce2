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

    /// <summary>What one conductor of a run may carry.</summary>
    public AmpacityFigures Of(int run, Conductor conductor)
    {
        CompleteRun described = build.Runs[run];
        (Conductor, double, double, double) key = (
            conductor, described.InsulationCelsius, described.AirCelsius, described.Bundling);
        if (!known.TryGetValue(key, out AmpacityFigures figures))
        {
            figures = Ampacity.Of(
                conductor, described.InsulationCelsius, described.AirCelsius, described.Bundling, build.Ruleset);
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
        Ruleset ruleset = build.Ruleset;
        double air = battery == build.ChargingBattery
            ? build.Stated.Limits.EngineBayCelsius ?? ruleset.Heat.EngineBay.Value
            : build.Stated.Limits.CabinCelsius ?? ruleset.Heat.Cabin.Value;
        return Ampacity.Of(
            Conductor.Of(LeastStrap(ruleset), Material.Copper), ruleset.Return.StrapInsulation.Value, air, 1, ruleset).LimitAmps;
    }

    /// <summary>What all conductors of a run may carry together.</summary>
    public double OfAll(int run, ConductorChoice choice) => Of(run, choice.Conductor).LimitAmps * choice.Count;
}
