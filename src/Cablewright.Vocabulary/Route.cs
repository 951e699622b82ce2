using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>Where a run lies, which decides the surroundings that its heat must reach.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Route>))]
public enum Route
{
    /// <summary>Under the bonnet, beside the engine.</summary>
    [JsonStringEnumMemberName("engine-bay")]
    EngineBay,

    /// <summary>Inside the passenger space or boot, in free air.</summary>
    [JsonStringEnumMemberName("cabin")]
    Cabin,

    /// <summary>Outside, below the floor.</summary>
    [JsonStringEnumMemberName("underbody")]
    Underbody,

    /// <summary>Inside, bundled with other loaded conductors.</summary>
    [JsonStringEnumMemberName("loom")]
    Loom,
}
