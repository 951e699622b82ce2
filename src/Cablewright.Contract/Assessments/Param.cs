using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Cablewright.Contract.Assessments;

/// <summary>
/// One of the values of which a sentence is made: a number in the unit that its name carries, a text, a list, or the values of
/// one of several sentences. A number that has no end is the text <c>Infinity</c>.
/// </summary>
[JsonConverter(typeof(ParamJson))]
public readonly record struct Param
{
    private Param(object value) => Value = value;

    /// <summary>A number, a text, a list of such, or values by their names.</summary>
    internal object? Value { get; }

    /// <summary>The number, where it is one.</summary>
    public double? Number => Value as double?;

    /// <summary>The text, where it is one.</summary>
    public string? Text => Value as string;

    /// <summary>The list, where it is one.</summary>
    public IReadOnlyList<Param>? List => Value as IReadOnlyList<Param>;

    /// <summary>The values of a sentence, where it holds those.</summary>
    public IReadOnlyDictionary<string, Param>? Named => Value as IReadOnlyDictionary<string, Param>;

    /// <summary>A number.</summary>
    public static implicit operator Param(double number) => new(number);

    /// <summary>A text.</summary>
    public static implicit operator Param(string text) => new(text);

    /// <summary>A list of texts.</summary>
    public static Param Of(IEnumerable<string> texts) => new(texts.Select(text => (Param)text).ToArray());

    /// <summary>A list of numbers.</summary>
    public static Param Of(IEnumerable<double> numbers) => new(numbers.Select(number => (Param)number).ToArray());

    /// <summary>The values of several sentences.</summary>
    public static Param Of(IEnumerable<IReadOnlyDictionary<string, Param>> sentences) =>
        new(sentences.Select(sentence => new Param(sentence)).ToArray());

    /// <summary>Writes it as JSON.</summary>
    /// <param name="writer">Takes what is written.</param>
    /// <param name="shown">A number as it is shown.</param>
    public void Write(Utf8JsonWriter writer, Func<double, double> shown)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(shown);
        switch (Value)
        {
            case double number when double.IsFinite(number): writer.WriteNumberValue(shown(number)); break;
            case double number: writer.WriteStringValue(number.ToString(CultureInfo.InvariantCulture)); break;
            case string text: writer.WriteStringValue(text); break;
            case IReadOnlyList<Param> list:
                writer.WriteStartArray();
                foreach (Param item in list) item.Write(writer, shown);
                writer.WriteEndArray();
                break;
            case IReadOnlyDictionary<string, Param> named: Write(writer, named, shown); break;
            default: writer.WriteNullValue(); break;
        }
    }

    /// <summary>Writes values by their names.</summary>
    /// <param name="writer">Takes what is written.</param>
    /// <param name="named">The values.</param>
    /// <param name="shown">A number as it is shown.</param>
    public static void Write(Utf8JsonWriter writer, IReadOnlyDictionary<string, Param> named, Func<double, double> shown)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(named);
        writer.WriteStartObject();
        foreach ((string name, Param value) in named)
        {
            writer.WritePropertyName(name);
            value.Write(writer, shown);
        }

        writer.WriteEndObject();
    }

    /// <summary>Reads one.</summary>
    internal static Param Read(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Number => element.GetDouble(),
        JsonValueKind.String => element.GetString()!,
        JsonValueKind.Array => new Param(element.EnumerateArray().Select(Read).ToArray()),
        JsonValueKind.Object => new Param(
            element.EnumerateObject().ToDictionary(member => member.Name, member => Read(member.Value), StringComparer.Ordinal)),
        _ => throw new JsonException("A number, a text, a list or an object was expected."),
    };
}

/// <summary>How such a value is written.</summary>
internal sealed class ParamJson : JsonConverter<Param>
{
    /// <inheritdoc/>
    public override Param Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Param.Read(JsonElement.ParseValue(ref reader));

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Param value, JsonSerializerOptions options) =>
        value.Write(writer, number => number);
}
