using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Audits;
using Cablewright.Contract.Comparisons;
using Cablewright.Engine.Numerics;

namespace Cablewright.Service.Answers;

/// <summary>
/// Numbers that were computed are written with six significant digits; those that were stated stay as they are.
/// </summary>
internal static class ShownNumbers
{
    private static readonly string?[] Computed =
        [typeof(Assessment).Namespace, typeof(ConductorAudit).Namespace, typeof(Comparison).Namespace];

    private static readonly ShownNumber Converter = new();

    /// <summary>Has the computed numbers of a type written like that.</summary>
    public static void Apply(JsonTypeInfo type)
    {
        if (!Computed.Contains(type.Type.Namespace)) return;
        foreach (JsonPropertyInfo member in type.Properties)
        {
            if (member.PropertyType == typeof(double)) member.CustomConverter = Converter;
            else if (member.PropertyType == typeof(double?)) member.CustomConverter = new ShownNumberOrNone();
            else if (member.PropertyType == typeof(IReadOnlyDictionary<string, Param>))
                member.CustomConverter = new ShownParams();
        }
    }

    /// <summary>A number as an answer shows it: six significant digits, and no zero below zero.</summary>
    private static double Shown(double value) => Significant.Round(value) + 0.0;

    private sealed class ShownNumber : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(Shown(value));
    }

    private sealed class ShownParams : JsonConverter<IReadOnlyDictionary<string, Param>>
    {
        public override IReadOnlyDictionary<string, Param> Read(
            ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => throw new NotSupportedException();

        public override void Write(
            Utf8JsonWriter writer, IReadOnlyDictionary<string, Param> value, JsonSerializerOptions options) =>
            Param.Write(writer, value, Shown);
    }

    private sealed class ShownNumberOrNone : JsonConverter<double?>
    {
        public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType is JsonTokenType.Null ? null : reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
        {
            if (value is { } number) writer.WriteNumberValue(Shown(number));
            else writer.WriteNullValue();
        }
    }
}
