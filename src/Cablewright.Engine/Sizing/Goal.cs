using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>What a choice is to reach.</summary>
/// <param name="Volts">The most that may be lost on the way to each amplifier and back.</param>
/// <param name="Stock">What it may be made of.</param>
/// <param name="MostParallel">How many conductors may lie in parallel where a build does not state it.</param>
internal sealed record Goal(double[] Volts, Stock Stock, int MostParallel)
{
    /// <summary>
    /// Whether a supply conductor is to carry full output continuously, so that a fuse which does protects it; and whether a
    /// ground is to be the same cable as its supply.
    /// </summary>
    public bool IsUsual => Stock is not Stock.Any;

    /// <summary>Whether a choice may lose more than the hard limit: where that cannot be helped.</summary>
    public bool MayExceedLimit { get; init; }

    /// <summary>The same limit for every amplifier, in the share that its source's voltage is of the charging voltage.</summary>
    public static Goal Of(double volts, Stock stock, BuildModel model) => new(
        [.. Enumerable.Range(0, model.Build.Draws.Count).Select(amplifier => volts * model.Circuit.SourceShareOf(amplifier))],
        stock,
        CandidateList.MostParallel(stock, model.Build));

    /// <summary>Whether an evaluation keeps every amplifier's limit.</summary>
    public bool IsKeptBy(OperatingEnvelope envelope, CircuitModel circuit) => !Over(envelope, circuit).Any();

    /// <summary>The amplifiers whose drop is above the goal.</summary>
    public IEnumerable<int> Over(OperatingEnvelope envelope, CircuitModel circuit) =>
        Enumerable.Range(0, Volts.Length)
            .Where(amplifier => Significant.Exceeds(circuit.LostVolts(amplifier, envelope), Volts[amplifier]));
}
