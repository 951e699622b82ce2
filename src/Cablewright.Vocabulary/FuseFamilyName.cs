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

    /// <summary>Glass cartridge of the trade's AGU size.</summary>
    [JsonStringEnumMemberName("glass-agu")]
    GlassAgu,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF30.</summary>
    [JsonStringEnumMemberName("strip-sf30")]
    StripSf30,

    /// <summary>Bolt-in strip, ISO 8820-5 type SF51.</summary>
    [JsonStringEnumMemberName("strip-sf51")]
    StripSf51,

    /// <summary>Small two-blade bolt-in fuse of the trade's pattern.</summary>
    [JsonStringEnumMemberName("mini-ANL")]
    MiniAnl,

    /// <summary>Bolt-in strip of the trade's ANL pattern.</summary>
    [JsonStringEnumMemberName("ANL")]
    Anl,

    /// <summary>Fuse with one bolt, on a battery's post or a bus bar's stud, ISO 8820-6.</summary>
    [JsonStringEnumMemberName("single-bolt")]
    SingleBolt,

    /// <summary>Current-limiting cartridge, UL 248-15.</summary>
    [JsonStringEnumMemberName("class-t")]
    ClassT,

    /// <summary>Resettable direct-current breaker.</summary>
    [JsonStringEnumMemberName("circuit-breaker")]
    CircuitBreaker,
}
