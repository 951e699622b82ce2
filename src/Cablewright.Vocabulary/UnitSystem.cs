using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>
/// The units in which the sentences of an answer are written. Numbers in an answer always carry their unit in the member's name.
/// </summary>
[JsonConverter(typeof(JsonStringEnumConverter<UnitSystem>))]
public enum UnitSystem
{
    /// <summary>Feet, inches, degrees Fahrenheit.</summary>
    [JsonStringEnumMemberName("us")]
    Us,

    /// <summary>Metres, centimetres, degrees Celsius.</summary>
    [JsonStringEnumMemberName("metric")]
    Metric,
}
