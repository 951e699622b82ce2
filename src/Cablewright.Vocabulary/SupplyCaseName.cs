using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What the supply is doing while its energy is counted.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SupplyCaseName>))]
public enum SupplyCaseName
{
    /// <summary>Engine running, alternator hot and at its rated speed.</summary>
    [JsonStringEnumMemberName("at-speed")]
    AtSpeed,

    /// <summary>Engine idling, alternator hot.</summary>
    [JsonStringEnumMemberName("idle")]
    Idle,

    /// <summary>Engine off: the batteries alone.</summary>
    [JsonStringEnumMemberName("engine-off")]
    EngineOff,
}
