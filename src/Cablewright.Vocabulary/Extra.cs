using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What an answer holds only where it is asked for.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Extra>))]
public enum Extra
{
    /// <summary>Each run with its neighbours in size, metal and count, and what the whole costs against what it loses.</summary>
    [JsonStringEnumMemberName("alternatives")]
    Alternatives,

    /// <summary>By how much all amplifiers could be larger.</summary>
    [JsonStringEnumMemberName("headroom")]
    Headroom,

    /// <summary>What becomes of the verdict when what was stated or assumed is a little off.</summary>
    [JsonStringEnumMemberName("robustness")]
    Robustness,
}
