using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What a part of a wiring kit is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<KitPartKind>))]
public enum KitPartKind
{
    /// <summary>Cable for the supply side.</summary>
    [JsonStringEnumMemberName("power-wire")]
    PowerWire,

    /// <summary>Cable for the return side.</summary>
    [JsonStringEnumMemberName("ground-wire")]
    GroundWire,

    /// <summary>A fuse with its holder.</summary>
    [JsonStringEnumMemberName("fuse")]
    Fuse,

    /// <summary>A block that parts one conductor into several; its fuses, if any, are parts of their own.</summary>
    [JsonStringEnumMemberName("distribution-block")]
    DistributionBlock,

    /// <summary>The thin lead that switches the amplifier on.</summary>
    [JsonStringEnumMemberName("turn-on-lead")]
    TurnOnLead,

    /// <summary>The screened pair that carries the signal.</summary>
    [JsonStringEnumMemberName("signal-interconnect")]
    SignalInterconnect,

    /// <summary>Cable from amplifier to loudspeaker.</summary>
    [JsonStringEnumMemberName("speaker-wire")]
    SpeakerWire,

    /// <summary>A ring terminal.</summary>
    [JsonStringEnumMemberName("ring-terminal")]
    RingTerminal,

    /// <summary>A grommet for a hole in a metal wall.</summary>
    [JsonStringEnumMemberName("grommet")]
    Grommet,

    /// <summary>Heat-shrink tubing.</summary>
    [JsonStringEnumMemberName("heat-shrink")]
    HeatShrink,

    /// <summary>Split loom: the corrugated sleeve for cable beside the engine.</summary>
    [JsonStringEnumMemberName("loom")]
    Loom,

    /// <summary>Cable ties.</summary>
    [JsonStringEnumMemberName("ties")]
    Ties,
}
