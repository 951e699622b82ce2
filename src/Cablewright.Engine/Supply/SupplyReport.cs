using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>What the supply can give and for how long.</summary>
/// <param name="Balance">Who asks for what.</param>
/// <param name="Circuit">The batteries at their own voltage; <c>null</c> where full output has no solution.</param>
/// <param name="Cases">Each case.</param>
/// <param name="EngineOffMinutes">Minutes with the engine off; <c>null</c> where the batteries' energy is not counted.</param>
/// <param name="Violations">The rules that do not hold.</param>
internal sealed record SupplyReport(
    EnergyBalance Balance, SupplyCircuit? Circuit, IReadOnlyList<SupplyCaseResult> Cases, double? EngineOffMinutes,
    IReadOnlyList<Violation> Violations)
{
    /// <summary>The case of a name, or <c>null</c> where it was not worked out.</summary>
    public SupplyCaseResult? this[SupplyCaseName name] => Cases.FirstOrDefault(each => each.Name == name);
}
