using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>What a verdict that hangs on a time-current band weighs.</summary>
internal static class RecalledBand
{
    /// <summary>
    /// A fail; a caution where the band is only recalled and would not have to be off by more than it may for the rule to hold.
    /// </summary>
    /// <param name="band">The band.</param>
    /// <param name="factor">By how much the band would have to be off.</param>
    public static Severity Weigh(TimeCurrentBand band, double factor) =>
        band.IsRead || Significant.Exceeds(factor, band.Uncertainty.Value) ? Severity.Fail : Severity.Caution;
}
