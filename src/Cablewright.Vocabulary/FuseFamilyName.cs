using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The family that a fuse belongs to.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<FuseFamilyName>))]
public enum FuseFamilyName
{
    /// <summary>Blade, ISO 8820-3 type C (the middle size).</summary>
    [JsonStringEnumMemberName("blade-c")]
    BladeC,

    /// <summary>Blade, ISO 8820-3 type E (the large size).</summary>
    [JsonStringEnumMemberName("blade-e")]
    BladeE,

    /// <summary>Blade, ISO 8820-3 type F (the small size).</summary>
    [JsonStringEnumMemberName("blade-f")]
    BladeF,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF30.</summary>
    [JsonStringEnumMemberName("strip-sf30")]
    StripSf30,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF51.</summary>
    [JsonStringEnumMemberName("strip-sf51")]
    StripSf51,

    /// <summary>Bolt-in strip of the trade's ANL pattern.</summary>
    [JsonStringEnumMemberName("ANL")]
    Anl,

    /// <summary>Current-limiting cartridge, UL 248-15.</summary>
    [JsonStringEnumMemberName("class-t")]
    ClassT,

    /// <summary>Resettable direct-current breaker.</summary>
    [JsonStringEnumMemberName("circuit-breaker")]
    CircuitBreaker,
}
