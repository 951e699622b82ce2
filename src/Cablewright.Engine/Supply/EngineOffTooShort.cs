using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

internal sealed class EngineOffTooShort() : SupplyRule(
    ViolationKind.EngineOffTooShort, Severity.Fail, "supply.engine-off-too-short", _ => OwnLimits.EngineOffTime,
    "With the engine off the batteries reach their limit before the time that the build asks for.")
{
    /// <inheritdoc/>
    public override IEnumerable<Violation> Check(SupplyFacts facts)
    {
        if (facts[SupplyCaseName.EngineOff] is { MinutesToLimit: { } minutes }
            && facts.Build.Stated.Limits.EngineOffMinutes is { } wished && Significant.Exceeds(wished, minutes))
            yield return By(0, minutes, wished);
    }
}
