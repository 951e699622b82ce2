using System.Text.Json.Serialization;

namespace Cablewright.Engine.Sources;

/// <summary>How the data files of the sources are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(RestVoltageRow[]))]
internal sealed partial class SourcesJson : JsonSerializerContext;
