using System.Text.Json;
using System.Text.Json.Serialization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Golden;

/// <summary>
/// A build with known answers, as a folder: <c>input.json</c>, <c>expected.json</c> with a tolerance for each figure,
/// <c>README.md</c> with the circuit drawn and the source of the figures, and, where a simulator gave them, the netlist
/// <c>circuit.cir</c>.
/// </summary>
internal sealed record GoldenCase(Build Build, Expectations Expected, string? Netlist)
{
    private static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectRequiredConstructorParameters = true,
        Converters = { new SizeConverter(), new WordConverter() },
    };

    public static IEnumerable<string> Names =>
        Directory.GetDirectories(Root).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal);

    private static string Root => Path.Combine(AppContext.BaseDirectory, "Golden");

    public static GoldenCase Read(string name)
    {
        string folder = Path.Combine(Root, name), netlist = Path.Combine(folder, "circuit.cir");
        return new GoldenCase(
            JsonSerializer.Deserialize<Build>(File.ReadAllText(Path.Combine(folder, "input.json")), Json)!,
            JsonSerializer.Deserialize<Expectations>(File.ReadAllText(Path.Combine(folder, "expected.json")), Json)!,
            File.Exists(netlist) ? netlist : null);
    }

    private sealed class SizeConverter : JsonConverter<ConductorSize>
    {
        public override ConductorSize Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            ConductorSize.Of(reader.GetString()!);

        public override void Write(Utf8JsonWriter writer, ConductorSize value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.Label);
    }

    /// <summary>Reads the engine's enumerations by the words of the trade.</summary>
    private sealed class WordConverter : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)Activator.CreateInstance(typeof(OfOne<>).MakeGenericType(typeToConvert))!;

        private sealed class OfOne<T> : JsonConverter<T> where T : struct, Enum
        {
            public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
                TradeWords.TryParse(reader.GetString()!, out T value)
                    ? value
                    : throw new JsonException($"No such word: {reader.GetString()}");

            public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
                writer.WriteStringValue(value.Word());
        }
    }
}

/// <summary>What must come out.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Codes">The codes of the findings that weigh more than an info, each once.</param>
/// <param name="Figures">The numbers.</param>
internal sealed record Expectations(Verdict Verdict, string[] Codes, Expectation[] Figures);

/// <summary>One figure of the answer.</summary>
/// <param name="Of">Where it stands: <c>runs/main/dropVolts</c>, <c>runs/main/fuse/opensSeconds</c>,
/// <c>amplifiers/bass/terminalVolts</c>, <c>supply/lowestVolts</c>.</param>
/// <param name="Value">The figure.</param>
/// <param name="Within">Allowed relative difference.</param>
/// <param name="Netlist">The name under which the netlist prints the same figure.</param>
internal sealed record Expectation(string Of, double Value, double Within, string? Netlist = null);
