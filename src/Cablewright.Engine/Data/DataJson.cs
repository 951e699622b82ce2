using System.Text.Json.Serialization;

namespace Cablewright.Engine.Data;

/// <summary>How the data files of the named figures are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(NamedFigure[]))]
internal sealed partial class DataJson : JsonSerializerContext;
