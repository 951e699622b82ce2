using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Engine;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Reports.Assessments;

/// <summary>
/// What names an assessment: the same question has the same id in any unit, culture, process and order of members.
/// </summary>
internal static class AssessmentIdentity
{
    private const string Prefix = "asm_";

    private static readonly JsonTypeInfo<Question> Shape = (JsonTypeInfo<Question>)Canonical().GetTypeInfo(typeof(Question));

    /// <summary>
    /// <c>asm_</c> and the SHA-256, in lower-case hexadecimal, of the canonical JSON of build, ruleset and engine version: SI
    /// values at nine significant digits, members sorted, what was left out left out. Ruleset and engine version fix every
    /// default, so that leaving a value out and stating its default are two questions: their answers differ in
    /// <c>assumptions</c>.
    /// </summary>
    public static string Of(Build build, Ruleset ruleset)
    {
        byte[] canonical = JsonSerializer.SerializeToUtf8Bytes(new Question(build, Release.EngineVersion, ruleset.Id), Shape);
        return Prefix + Convert.ToHexStringLower(SHA256.HashData(canonical));
    }

    private static JsonSerializerOptions Canonical() => new()
    {
        TypeInfoResolver = CanonicalJson.Default.WithAddedModifier(SortMembers),
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new CanonicalNumber(), new CanonicalSize() },
    };

    private static void SortMembers(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object) return;
        int place = 0;
        foreach (JsonPropertyInfo member in type.Properties.OrderBy(member => member.Name, StringComparer.Ordinal))
            member.Order = place++;
    }

    /// <summary>All that an answer depends on.</summary>
    /// <param name="Build">The build in SI units.</param>
    /// <param name="Engine">The engine's version.</param>
    /// <param name="Ruleset">The ruleset's id.</param>
    internal sealed record Question(Build Build, string Engine, string Ruleset);

    private sealed class CanonicalNumber : JsonConverter<double>
    {
        private const string NineSignificantDigits = "E8";

        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
            writer.WriteRawValue(value.ToString(NineSignificantDigits, System.Globalization.CultureInfo.InvariantCulture));
    }

    private sealed class CanonicalSize : JsonConverter<ConductorSize>
    {
        public override ConductorSize Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException();

        public override void Write(Utf8JsonWriter writer, ConductorSize value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.Label);
    }
}

[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(AssessmentIdentity.Question))]
internal sealed partial class CanonicalJson : JsonSerializerContext;
