using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>Which way the current goes in a run.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Side>))]
public enum Side
{
    /// <summary>From a battery's positive terminal towards the amplifiers.</summary>
    [JsonStringEnumMemberName("supply")]
    Supply,

    /// <summary>From the amplifiers back to a battery's negative terminal or the vehicle's body.</summary>
    [JsonStringEnumMemberName("return")]
    Return,
}
