using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Evaluation;

/// <summary>A decision, what the circuit does with it, and which rules do not hold.</summary>
/// <param name="Decision">Conductors and fuses.</param>
/// <param name="Currents">The worst of the operating points.</param>
/// <param name="Guards">Which fuses guard which run.</param>
/// <param name="Breaches">The rules that do not hold.</param>
/// <param name="SolvableShare">1; or, where the voltage collapses, the largest share of the output that has a solution.</param>
internal sealed record DesignEvaluation(
    Decision Decision, WorstCurrents Currents, GuardMap Guards, IReadOnlyList<Breach> Breaches, double SolvableShare);
