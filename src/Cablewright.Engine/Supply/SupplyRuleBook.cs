using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>Every rule about what is drawn and what can be given.</summary>
internal static class SupplyRuleBook
{
    private static readonly SupplyRule[] Rules =
    [
        new AverageAboveAlternator(), new PeakAboveConverter(), new PeakAboveAlternator(), new AverageAboveIdle(),
        new AverageAboveCharger(), new MixedChemistries(), new CapacitorHoldsBriefly(), new FullOutputNotHeld(),
        new VoltageLowAtFullOutput(), new EngineOffTooShort(),
    ];

    /// <summary>All of them.</summary>
    public static IEnumerable<Rule> All => Rules;

    /// <summary>Works out what the supply can give a design.</summary>
    /// <param name="model">The build.</param>
    /// <param name="evaluation">The design, worked out.</param>
    public static SupplyReport Report(BuildModel model, DesignEvaluation evaluation)
    {
        var balance = new EnergyBalance(model, evaluation.Envelope);
        SupplyCircuit? circuit = evaluation.SolvableShare < 1 ? null : new SupplyCircuit(model, evaluation.Envelope);
        IReadOnlyList<SupplyCaseResult> cases = circuit is null ? [] : new SupplyCases(model.Build, circuit, balance).All();
        var facts = new SupplyFacts(model.Build, balance, cases);
        return new SupplyReport(
            balance, circuit, cases, facts[SupplyCaseName.EngineOff]?.MinutesToLimit,
            [.. Rules.SelectMany(rule => rule.Check(facts))]);
    }
}
