using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The metal of a conductor.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Material>))]
public enum Material
{
    /// <summary>Annealed bare copper.</summary>
    [JsonStringEnumMemberName("copper")]
    [AlsoRead("OFC")]
    Copper,

    /// <summary>Annealed copper, each strand coated with tin.</summary>
    [JsonStringEnumMemberName("tinned-copper")]
    [AlsoRead("tinned OFC")]
    TinnedCopper,

    /// <summary>Aluminium strands with a skin of copper.</summary>
    [JsonStringEnumMemberName("copper-clad-aluminium")]
    [AlsoRead("CCA")]
    CopperCladAluminium,

    /// <summary>Aluminium.</summary>
    [JsonStringEnumMemberName("aluminium")]
    [AlsoRead("aluminum")]
    Aluminium,
}
