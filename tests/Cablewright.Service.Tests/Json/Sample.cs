using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Service.Tests.Json;

/// <summary>A small contract with every sort of member that requests have.</summary>
internal sealed record Sample
{
    public string? Name { get; init; }

    public required SampleVehicle Vehicle { get; init; }

    public IReadOnlyList<SampleRun> Runs { get; init; } = [];

    public IReadOnlyList<SampleWord>? Include { get; init; }

    /// <summary>Not a member of a request: it cannot be set.</summary>
    public int RunCount => Runs.Count;
}

internal sealed record SampleVehicle
{
    [Quantity(QuantityKind.Voltage, "6 V", "60 V", "13.8 V")]
    public string? ChargingVoltage { get; init; }
}

internal sealed record SampleRun
{
    public required string Id { get; init; }

    [Quantity(QuantityKind.Length, "0.1 m", "30 m", "16 ft")]
    public required string Length { get; init; }

    public SampleWord? Route { get; init; }

    public int? Count { get; init; }

    public double? Price { get; init; }

    public bool Fitted { get; init; } = true;
}

internal enum SampleWord
{
    [JsonStringEnumMemberName("engine-bay")]
    EngineBay,

    [JsonStringEnumMemberName("cabin")]
    Cabin,
}

/// <summary>What no request may hold.</summary>
internal sealed record Unfit
{
    public DayOfWeek Day { get; init; }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, Converters = [typeof(JsonStringEnumConverter<SampleWord>)])]
[JsonSerializable(typeof(Sample))]
[JsonSerializable(typeof(Unfit))]
internal sealed partial class SampleJson : JsonSerializerContext;
