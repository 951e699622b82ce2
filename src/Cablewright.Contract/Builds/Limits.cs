using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>The caller's own limits.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Limits
{
    /// <summary>
    /// Largest permitted drop from battery to amplifier and back, in percent of the charging voltage or in volts; hard.
    /// </summary>
    [Quantity(QuantityKind.Ratio, "0.1 %", "50 %", "3 %")]
    [Quantity(QuantityKind.Voltage, "0.01 V", "30 V", "0.4 V")]
    public string? MaxDrop { get; init; }

    /// <summary>How long the music must play with the engine off; hard.</summary>
    [Quantity(QuantityKind.Duration, "1 min", "168 h", "2 h")]
    public string? EngineOffTime { get; init; }

    /// <summary>Temperature of the air in the engine bay.</summary>
    [Quantity(QuantityKind.Temperature, "-40 C", "120 C", "80 C")]
    public string? EngineBayTemperature { get; init; }

    /// <summary>Temperature of the air in the cabin.</summary>
    [Quantity(QuantityKind.Temperature, "-40 C", "90 C", "40 C")]
    public string? CabinTemperature { get; init; }

    /// <summary>Temperature of the air below the floor.</summary>
    [Quantity(QuantityKind.Temperature, "-40 C", "120 C", "60 C")]
    public string? UnderbodyTemperature { get; init; }
}
