using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The worst severity among the findings.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Verdict>))]
public enum Verdict
{
    /// <summary>No finding weighs more than an info.</summary>
    [JsonStringEnumMemberName("pass")]
    Pass,

    /// <summary>At least one caution.</summary>
    [JsonStringEnumMemberName("caution")]
    Caution,

    /// <summary>At least one fail.</summary>
    [JsonStringEnumMemberName("fail")]
    Fail,
}
