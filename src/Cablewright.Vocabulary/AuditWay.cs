using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>A way to a cable's area.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<AuditWay>))]
public enum AuditWay
{
    /// <summary>From count and diameter of its strands.</summary>
    [JsonStringEnumMemberName("strands")]
    Strands,

    /// <summary>From the resistance of a length.</summary>
    [JsonStringEnumMemberName("resistance")]
    Resistance,

    /// <summary>From the mass of a length.</summary>
    [JsonStringEnumMemberName("mass")]
    Mass,
}
