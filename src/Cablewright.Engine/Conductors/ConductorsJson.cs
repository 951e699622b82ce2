using System.Text.Json.Serialization;

namespace Cablewright.Engine.Conductors;

/// <summary>How the data files of the conductors are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(MaterialRow[]))]
[JsonSerializable(typeof(MetricSizeRow[]))]
internal sealed partial class ConductorsJson : JsonSerializerContext;
