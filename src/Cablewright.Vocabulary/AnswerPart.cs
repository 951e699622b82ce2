using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>Parts of an answer that are left out where they take more work than is allowed.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<AnswerPart>))]
public enum AnswerPart
{
    /// <summary>Some of the questions to ask next.</summary>
    [JsonStringEnumMemberName("askNext")]
    AskNext,

    /// <summary>The headroom.</summary>
    [JsonStringEnumMemberName("headroom")]
    Headroom,

    /// <summary>The robustness.</summary>
    [JsonStringEnumMemberName("robustness")]
    Robustness,

    /// <summary>The alternatives of some runs.</summary>
    [JsonStringEnumMemberName("alternatives")]
    Alternatives,

    /// <summary>What the whole costs against what it loses.</summary>
    [JsonStringEnumMemberName("frontier")]
    Frontier,
}
