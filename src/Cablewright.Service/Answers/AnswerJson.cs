using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract;
using Cablewright.Service.Json;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Answers;

/// <summary>How answers are written: the contract's shapes, readable text, the same bytes for the same answer.</summary>
internal static class AnswerJson
{
    /// <summary>The contract's shapes. Text is escaped no more than JSON asks for: an answer is never part of a page.</summary>
    public static ContractJson Shapes { get; } = new(new JsonSerializerOptions(ContractJson.Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new WordReading<Material>() },
    });

    private static readonly JsonSerializerOptions Shown = new(Shapes.Options)
    {
        TypeInfoResolver = ContractJson.Default.WithAddedModifier(ShownNumbers.Apply),
    };

    /// <summary>An answer as UTF-8.</summary>
    public static byte[] Write<T>(T answer, JsonTypeInfo<T> shape) =>
        JsonSerializer.SerializeToUtf8Bytes(answer, Shown.GetTypeInfo(shape.Type));
}
