using System.Text.Json;
using Cablewright.Contract;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Batches;

/// <summary>
/// Takes an array of builds apart without looking into them: what is wrong inside one is for that one to say, as long as it can
/// be seen where it ends.
/// </summary>
internal static class BuildArray
{
    private static readonly string Accepted =
        $"an array of at most {ContractLimits.BatchBuilds} builds; for more, {JsonMediaType.Lines}";

    /// <summary>Its items, or what is wrong with the array itself.</summary>
    public static (IReadOnlyList<BuildText> Builds, ProblemAnswer? Problem) Read(ReadOnlyMemory<byte> utf8)
    {
        ReadOnlyMemory<byte> text = ShapeReader.WithoutMark(utf8);
        try
        {
            return Split(text);
        }
        catch (JsonException)
        {
            Fault fault = JsonSyntax.Fault(text, ContractLimits.BatchBytes, out JsonDocument? document)!;
            document?.Dispose();
            return Refused(ProblemKinds.NotUnderstood, fault);
        }
    }

    /// <summary>The refusal of an array with more bytes than it may have.</summary>
    public static ProblemAnswer TooLarge() => FaultyRequest.Answer(
        ProblemKinds.TooLarge, ShapeReader.TooLarge<object>(ContractLimits.BatchBytes, "array").Faults);

    private static (IReadOnlyList<BuildText>, ProblemAnswer?) Split(ReadOnlyMemory<byte> text)
    {
        var reader = new Utf8JsonReader(text.Span, new JsonReaderOptions { MaxDepth = ContractLimits.BatchBytes });
        reader.Read();
        bool isArray = reader.TokenType == JsonTokenType.StartArray;
        List<BuildText> builds = [];
        if (!isArray) reader.Skip();
        else while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) builds.Add(Item(ref reader, text, builds.Count));
        reader.Read();
        if (!isArray) return Refused(
            ProblemKinds.NotUnderstood, new Fault("", ShapeCodes.WrongType, "expected an array of builds", null, Accepted));
        if (builds.Count > ContractLimits.BatchBuilds) return Refused(
            ProblemKinds.TooLarge, new Fault("", ContentCodes.TooManyItems, $"{builds.Count} builds", null, Accepted));
        return (builds, null);
    }

    private static BuildText Item(ref Utf8JsonReader reader, ReadOnlyMemory<byte> text, int before)
    {
        int start = (int)reader.TokenStartIndex;
        reader.Skip();
        return BuildText.InArray(before + 1, text[start..(int)reader.BytesConsumed]);
    }

    private static (IReadOnlyList<BuildText>, ProblemAnswer?) Refused(ProblemKind kind, Fault fault) =>
        ([], FaultyRequest.Answer(kind, [fault]));
}
