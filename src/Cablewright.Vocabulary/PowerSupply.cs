using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>How an amplifier's own converter treats a falling supply.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PowerSupply>))]
public enum PowerSupply
{
    /// <summary>Holds the output: the input current rises as the voltage falls.</summary>
    [JsonStringEnumMemberName("regulated")]
    Regulated,

    /// <summary>Lets the output fall with the square of the voltage.</summary>
    [JsonStringEnumMemberName("unregulated")]
    Unregulated,
}
