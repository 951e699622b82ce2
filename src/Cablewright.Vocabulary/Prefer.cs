using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What a choice of conductors makes least.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Prefer>))]
public enum Prefer
{
    /// <summary>
    /// What the job costs, conductors, terminals and fuses: the stated prices, else the ruleset's relative ones.
    /// </summary>
    [JsonStringEnumMemberName("cost")]
    Cost,

    /// <summary>The mass of their metal.</summary>
    [JsonStringEnumMemberName("mass")]
    Mass,

    /// <summary>How many different conductors there are to buy, by size and metal; among equals, what they cost.</summary>
    [JsonStringEnumMemberName("fewest-sizes")]
    FewestSizes,
}
