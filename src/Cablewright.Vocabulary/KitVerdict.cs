using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>Whether a kit serves a build.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<KitVerdict>))]
public enum KitVerdict
{
    /// <summary>It holds what the job needs.</summary>
    [JsonStringEnumMemberName("serves")]
    Serves,

    /// <summary>It does once a part is bought beside it or exchanged; its power wire bears the job.</summary>
    [JsonStringEnumMemberName("serves-with-change")]
    ServesWithChange,

    /// <summary>Its power wire is missing, too short or too thin, or the build fails with any kit.</summary>
    [JsonStringEnumMemberName("does-not-serve")]
    DoesNotServe,
}
