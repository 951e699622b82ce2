using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;

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

    /// <summary>What all conductors of a run may carry together.</summary>
    public double OfAll(int run, ConductorChoice choice) => Of(run, choice.Conductor).LimitAmps * choice.Count;
}
