using System.Text.Json.Serialization;

namespace Cablewright.Engine.Fuses;

/// <summary>How the data files of the fuses are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(FuseFamilyRow[]))]
internal sealed partial class FusesJson : JsonSerializerContext;
