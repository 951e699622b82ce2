using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What a rule is for.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Concern>))]
public enum Concern
{
    /// <summary>Fire, shock, protection.</summary>
    [JsonStringEnumMemberName("safety")]
    Safety,

    /// <summary>Voltage and output lost on the way.</summary>
    [JsonStringEnumMemberName("performance")]
    Performance,

    /// <summary>Charging, batteries, playing time.</summary>
    [JsonStringEnumMemberName("supply")]
    Supply,
}
