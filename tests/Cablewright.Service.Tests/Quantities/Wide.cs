using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Tests.Quantities;

/// <summary>One member of each kind, with ranges wide enough to be out of the way.</summary>
internal sealed record Wide
{
    [Quantity(QuantityKind.Length, "0 m", "1000000 m", "16 ft")]
    public string? Length { get; init; }

    [Quantity(QuantityKind.Mass, "0 kg", "1000000 kg", "350 g")]
    public string? Mass { get; init; }

    [Quantity(QuantityKind.Voltage, "0 V", "1000000 V", "13.8 V")]
    public string? Voltage { get; init; }

    [Quantity(QuantityKind.Current, "0 A", "1000000 kA", "200 A")]
    public string? Current { get; init; }

    [Quantity(QuantityKind.Power, "0 W", "1000000 kW", "1000 W")]
    public string? Power { get; init; }

    [Quantity(QuantityKind.Resistance, "0 Ohm", "1000000 Ohm", "1 mOhm")]
    public string? Resistance { get; init; }

    [Quantity(QuantityKind.TemperatureDifference, "0 K", "1000000 K", "10 K")]
    public string? TemperatureDifference { get; init; }

    [Quantity(QuantityKind.Temperature, "-273.15 C", "1000000 C", "105 C")]
    public string? Temperature { get; init; }

    [Quantity(QuantityKind.Ratio, "0 %", "1000000 %", "80 %")]
    public string? Ratio { get; init; }

    [Quantity(QuantityKind.Capacity, "0 Ah", "1000000 Ah", "70 Ah")]
    public string? Capacity { get; init; }

    [Quantity(QuantityKind.Level, "0 dB", "1000000 dB", "9 dB")]
    public string? Level { get; init; }

    [Quantity(QuantityKind.Duration, "0 s", "1000000 h", "2 h")]
    public string? Duration { get; init; }

    [Quantity(QuantityKind.RotationalSpeed, "0 rpm", "1000000 rpm", "800 rpm")]
    public string? RotationalSpeed { get; init; }

    [Quantity(QuantityKind.Capacitance, "0 F", "1000000 F", "1 F")]
    public string? Capacitance { get; init; }

    [Quantity(QuantityKind.Ratio, "0.1 %", "50 %", "3 %")]
    [Quantity(QuantityKind.Voltage, "0.01 V", "6 V", "0.5 V")]
    public string? MaxDrop { get; init; }

    [Quantity(QuantityKind.Length, "0.1 m", "30 m", "16 ft")]
    public string? RunLength { get; init; }
}
