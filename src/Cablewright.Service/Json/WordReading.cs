using System.Text.Json;
using System.Text.Json.Serialization;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Json;

/// <summary>Reads a word of the contract, or another that people type for it; writes the contract's.</summary>
internal sealed class WordReading<T> : JsonConverter<T> where T : struct, Enum
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType is JsonTokenType.String && TradeWords.TryParse(reader.GetString()!, out T value)
            ? value
            : throw new JsonException();

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Word());
}
