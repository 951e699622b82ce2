using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What the music is like, and so the ratio of average to peak power.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Programme>))]
public enum Programme
{
    /// <summary>A steady test tone at full output.</summary>
    [JsonStringEnumMemberName("sine")]
    Sine,

    /// <summary>Dense, heavily limited music: one third of rated power on average.</summary>
    [JsonStringEnumMemberName("compressed")]
    Compressed,

    /// <summary>Music with its dynamics left: one eighth of rated power on average.</summary>
    [JsonStringEnumMemberName("dynamic")]
    Dynamic,
}
