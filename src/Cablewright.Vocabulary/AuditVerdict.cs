using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>How a cable stands to its label.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<AuditVerdict>))]
public enum AuditVerdict
{
    /// <summary>Size and metal, as far as they are claimed, are there.</summary>
    [JsonStringEnumMemberName("true-to-claim")]
    TrueToClaim,

    /// <summary>It holds less metal than the claimed size.</summary>
    [JsonStringEnumMemberName("undersized")]
    Undersized,

    /// <summary>It is not of the claimed metal.</summary>
    [JsonStringEnumMemberName("other-metal")]
    OtherMetal,

    /// <summary>The measurements leave it open.</summary>
    [JsonStringEnumMemberName("cannot-be-told")]
    CannotBeTold,
}
