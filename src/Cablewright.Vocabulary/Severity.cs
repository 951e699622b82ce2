using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>How much a finding weighs.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Severity>))]
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    [JsonStringEnumMemberName("info")]
    Info,

    /// <summary>Look at this before building.</summary>
    [JsonStringEnumMemberName("caution")]
    Caution,

    /// <summary>Do not build it like this.</summary>
    [JsonStringEnumMemberName("fail")]
    Fail,
}
