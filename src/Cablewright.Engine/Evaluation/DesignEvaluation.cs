using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Evaluation;

/// <summary>A design, what the circuit does with it, and which rules do not hold.</summary>
/// <param name="Design">Conductors and fuses.</param>
/// <param name="Envelope">The worst of the operating points.</param>
/// <param name="Protection">Which fuses protect which run.</param>
/// <param name="Violations">The rules that do not hold.</param>
/// <param name="SolvableShare">1; or, where the voltage collapses, the largest share of the output that has a solution.</param>
internal sealed record DesignEvaluation(
    Design Design, OperatingEnvelope Envelope, ProtectionMap Protection, IReadOnlyList<Violation> Violations,
    double SolvableShare);
