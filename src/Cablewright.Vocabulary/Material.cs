using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The metal of a conductor.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Material>))]
public enum Material
{
    /// <summary>Annealed bare copper.</summary>
    [JsonStringEnumMemberName("copper")]
    Copper,

    /// <summary>Annealed copper, each strand coated with tin.</summary>
    [JsonStringEnumMemberName("tinned-copper")]
    TinnedCopper,

    /// <summary>Aluminium strands with a skin of copper.</summary>
    [JsonStringEnumMemberName("copper-clad-aluminium")]
    CopperCladAluminium,

    /// <summary>Aluminium.</summary>
    [JsonStringEnumMemberName("aluminium")]
    Aluminium,
}
