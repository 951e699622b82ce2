using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Builds;

/// <summary>The vehicle's electrical supply.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Vehicle
{
    /// <summary>The voltage at the battery that the alternator charges, engine running.</summary>
    [Quantity(QuantityKind.Voltage, "6 V", "60 V", "13.8 V")]
    public string? ChargingVoltage { get; init; }

    /// <summary>The alternator; not together with <c>converter</c>.</summary>
    public Alternator? Alternator { get; init; }

    /// <summary>The converter of a hybrid or electric vehicle; not together with <c>alternator</c>.</summary>
    public Converter? Converter { get; init; }

    /// <summary>The current that the vehicle itself draws with the engine running.</summary>
    [Quantity(QuantityKind.Current, "0 A", "1000 A", "45 A")]
    public string? BaseLoad { get; init; }

    /// <summary>The current that the vehicle itself draws with the engine off while music plays.</summary>
    [Quantity(QuantityKind.Current, "0 A", "1000 A", "3 A")]
    public string? StandbyLoad { get; init; }

    /// <summary>
    /// The batteries, at most 16; without a shop's key at most 8. The first stands at the alternator unless the alternator says
    /// otherwise; left out, one is assumed.
    /// </summary>
    [Items(0, ContractLimits.Batteries)]
    public IReadOnlyList<Battery>? Batteries { get; init; }

    /// <summary>Capacitors that stiffen the supply, at most 16.</summary>
    [Items(0, ContractLimits.Capacitors)]
    public IReadOnlyList<Capacitor>? Capacitors { get; init; }

    /// <summary>The vehicle's body as a conductor.</summary>
    public Body? Body { get; init; }
}
