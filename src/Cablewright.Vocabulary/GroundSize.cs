using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What the ground of an amplifier is chosen to be.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<GroundSize>))]
public enum GroundSize
{
    /// <summary>The same cable as the amplifier's supply, unless nothing else does.</summary>
    [JsonStringEnumMemberName("as-supply")]
    AsSupply,

    /// <summary>Any conductor that is no weaker than the supply.</summary>
    [JsonStringEnumMemberName("free")]
    Free,
}
