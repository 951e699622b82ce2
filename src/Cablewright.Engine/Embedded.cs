using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Conductors.Audit;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Supply;

namespace Cablewright.Engine;

/// <summary>Reads the data files that sit beside the code that uses them and are built into the assembly.</summary>
internal static class Embedded
{
    public static T Read<T>(string path, JsonTypeInfo<T> shape)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"The data file {path} is not in the assembly.");
        return JsonSerializer.Deserialize(stream, shape)
            ?? throw new InvalidOperationException($"The data file {path} is empty.");
    }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(RulesetFile))]
[JsonSerializable(typeof(MetricSizeRow[]))]
[JsonSerializable(typeof(MaterialRow[]))]
[JsonSerializable(typeof(NamedFigure[]))]
[JsonSerializable(typeof(AmpacityRow[]))]
[JsonSerializable(typeof(WallRow[]))]
[JsonSerializable(typeof(FuseFamilyRow[]))]
[JsonSerializable(typeof(RestVoltageRow[]))]
[JsonSerializable(typeof(MetalRangeRow[]))]
internal sealed partial class DataJson : JsonSerializerContext;
