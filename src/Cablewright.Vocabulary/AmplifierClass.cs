using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The class of an amplifier's output stage.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<AmplifierClass>))]
public enum AmplifierClass
{
    /// <summary>Full current at all times.</summary>
    [JsonStringEnumMemberName("A")]
    A,

    /// <summary>Linear with a small standing current.</summary>
    [JsonStringEnumMemberName("AB")]
    AB,

    /// <summary>Linear without standing current.</summary>
    [JsonStringEnumMemberName("B")]
    B,

    /// <summary>Switching.</summary>
    [JsonStringEnumMemberName("D")]
    D,

    /// <summary>Linear with rails that follow the music.</summary>
    [JsonStringEnumMemberName("H")]
    H,
}
