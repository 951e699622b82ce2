using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>How far the reading of a body came.</summary>
public enum ShapeOutcome
{
    /// <summary>The shape is right; there is a value. Its content may still be wrong.</summary>
    Read,

    /// <summary>The body has more bytes than allowed: status 413.</summary>
    TooLarge,

    /// <summary>The body is not JSON: status 400.</summary>
    NotJson,

    /// <summary>The body is JSON of another shape than the contract's: status 400.</summary>
    WrongShape,
}

/// <summary>A body that was read, or everything that is wrong with its shape.</summary>
/// <typeparam name="T">The contract's type.</typeparam>
/// <param name="Outcome">How far the reading came.</param>
/// <param name="Value">The value, or <c>null</c> beside any other outcome than <see cref="ShapeOutcome.Read"/>.</param>
/// <param name="Faults">What is wrong, in the body's order; empty beside a value.</param>
public sealed record Shaped<T>(ShapeOutcome Outcome, T? Value, IReadOnlyList<Fault> Faults) where T : class;
