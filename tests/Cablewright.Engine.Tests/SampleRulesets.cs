using Cablewright.Engine.Fuses;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Tests;

internal static class SampleRulesets
{
    /// <summary>The newest ruleset with other figures or tables.</summary>
    public static Ruleset With(
        IReadOnlyList<Figure>? figures = null, FuseFamilies? fuseFamilies = null, AmpacityTable? ampacity = null,
        ShortCircuitConstants? shortCircuit = null, RestVoltages? restVoltages = null, IsolatorRatings? isolatorRatings = null)
    {
        Ruleset newest = RulesetLibrary.Newest;
        return new Ruleset(newest.Id, newest.Published, newest.Summary, newest.SafetyNotes, figures ?? newest.Figures)
        {
            FuseFamilies = fuseFamilies ?? newest.FuseFamilies,
            Ampacity = ampacity ?? newest.Ampacity,
            ShortCircuit = shortCircuit ?? newest.ShortCircuit,
            RestVoltages = restVoltages ?? newest.RestVoltages,
            IsolatorRatings = isolatorRatings ?? newest.IsolatorRatings,
        };
    }
}
