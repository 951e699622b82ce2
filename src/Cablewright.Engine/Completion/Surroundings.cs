using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>How hot the air is where things lie.</summary>
internal static class Surroundings
{
    /// <summary>The stated temperature, or that of the ruleset; a loom lies in the cabin.</summary>
    public static double Celsius(Route route, Limits stated, Ruleset ruleset) => route switch
    {
        Route.EngineBay => stated.EngineBayCelsius ?? ruleset.Heat.EngineBay.Value,
        Route.Underbody => stated.UnderbodyCelsius ?? ruleset.Heat.Underbody.Value,
        _ => stated.CabinCelsius ?? ruleset.Heat.Cabin.Value,
    };
}
