using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>How two batteries are kept from emptying each other.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<IsolatorKind>))]
public enum IsolatorKind
{
    /// <summary>Contacts that close while the engine runs.</summary>
    [JsonStringEnumMemberName("relay")]
    Relay,

    /// <summary>Lets current pass from the run's start to its end only.</summary>
    [JsonStringEnumMemberName("diode")]
    Diode,

    /// <summary>A converter that charges the battery at the run's end with a limited current.</summary>
    [JsonStringEnumMemberName("dc-dc-charger")]
    DcDcCharger,
}
