using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>What a verdict that hangs on a time-current band weighs.</summary>
internal static class RecalledBand
{
    /// <summary>
    /// A fail; a caution where the band is only recalled and would not have to be off by more than it may for the rule to hold.
    /// </summary>
    /// <param name="band">The band.</param>
    /// <param name="ruleset">Says how far off a recalled band may be.</param>
    /// <param name="factor">By how much the band would have to be off.</param>
    public static Severity Weigh(TimeCurrentBand band, Ruleset ruleset, double factor) =>
        band.IsRead || Significant.Exceeds(factor, ruleset.Fuse.BandUncertainty.Value) ? Severity.Fail : Severity.Caution;
}
