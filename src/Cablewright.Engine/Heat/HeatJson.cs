using System.Text.Json.Serialization;

namespace Cablewright.Engine.Heat;

/// <summary>How the data files of the heat are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(WallRow[]))]
internal sealed partial class HeatJson : JsonSerializerContext;
