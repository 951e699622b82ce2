using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Cablewright.Engine.Data;

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
