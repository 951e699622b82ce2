using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>Whether something was stated in the build or chosen by the assessment.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Decided>))]
public enum Decided
{
    /// <summary>The build states it.</summary>
    [JsonStringEnumMemberName("given")]
    Given,

    /// <summary>It was left open.</summary>
    [JsonStringEnumMemberName("chosen")]
    Chosen,
}
