using System.Text.Json.Serialization;

namespace Cablewright.Engine.Audits;

/// <summary>How the data files of the audits are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(MetalRangeRow[]))]
internal sealed partial class AuditsJson : JsonSerializerContext;
