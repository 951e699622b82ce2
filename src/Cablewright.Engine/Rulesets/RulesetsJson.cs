using System.Text.Json.Serialization;
using Cablewright.Engine.Data;

namespace Cablewright.Engine.Rulesets;

/// <summary>How the data files of the rulesets are read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(RulesetFile))]
[JsonSerializable(typeof(AmpacityRow[]))]
[JsonSerializable(typeof(RestVoltageRow[]))]
[JsonSerializable(typeof(SourcedNumbers))]
internal sealed partial class RulesetsJson : JsonSerializerContext;
