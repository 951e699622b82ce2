using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Quantities;

/// <summary>A quantity that was read, or the reason why its text is none.</summary>
/// <param name="Kind">What it measures; meaningless beside a fault.</param>
/// <param name="Value">
/// By kind: metres, kilograms, volts, amperes, watts, ohms, degrees Celsius, a fraction, ampere-hours, decibels, seconds, turns
/// a minute, farads. 0 beside a fault.
/// </param>
/// <param name="Fault">What is wrong, or <c>null</c>.</param>
public readonly record struct QuantityReading(QuantityKind Kind, double Value, QuantityFault? Fault);

/// <summary>Why a text is not the quantity wanted.</summary>
/// <param name="Code">One of <see cref="QuantityCodes"/>.</param>
/// <param name="Detail">The reason, for people.</param>
/// <param name="Accepted">What would be right: the range and an example.</param>
public sealed record QuantityFault(string Code, string Detail, string Accepted);
