using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What a battery is made of.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Chemistry>))]
public enum Chemistry
{
    /// <summary>Lead-acid with free liquid.</summary>
    [JsonStringEnumMemberName("flooded")]
    Flooded,

    /// <summary>Lead-acid, absorbed in glass mat.</summary>
    [JsonStringEnumMemberName("agm")]
    Agm,

    /// <summary>Lead-acid, gelled.</summary>
    [JsonStringEnumMemberName("gel")]
    Gel,

    /// <summary>Lithium iron phosphate, four cells for each 12 V.</summary>
    [JsonStringEnumMemberName("lifepo4")]
    LiFePo4,
}
