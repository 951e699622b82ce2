using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What a change that makes a build feasible is about.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ChangeKind>))]
public enum ChangeKind
{
    /// <summary>Another fuse, or one where none stood.</summary>
    [JsonStringEnumMemberName("fuse")]
    Fuse,

    /// <summary>The fuse nearer its source.</summary>
    [JsonStringEnumMemberName("fuse-distance")]
    FuseDistance,

    /// <summary>A conductor of another size.</summary>
    [JsonStringEnumMemberName("conductor")]
    Conductor,

    /// <summary>A conductor of another metal.</summary>
    [JsonStringEnumMemberName("material")]
    Material,

    /// <summary>More conductors in parallel.</summary>
    [JsonStringEnumMemberName("parallel")]
    Parallel,

    /// <summary>Insulation of a higher temperature rating.</summary>
    [JsonStringEnumMemberName("insulation")]
    Insulation,

    /// <summary>An isolator of a higher rating.</summary>
    [JsonStringEnumMemberName("isolator")]
    Isolator,

    /// <summary>A larger battery.</summary>
    [JsonStringEnumMemberName("battery")]
    Battery,

    /// <summary>More sizes or metals to choose from.</summary>
    [JsonStringEnumMemberName("choice")]
    Choice,

    /// <summary>A shorter run, or shorter runs.</summary>
    [JsonStringEnumMemberName("length")]
    Length,

    /// <summary>Less power of an amplifier, or of all.</summary>
    [JsonStringEnumMemberName("power")]
    Power,

    /// <summary>Several of these together.</summary>
    [JsonStringEnumMemberName("combination")]
    Combination,
}
