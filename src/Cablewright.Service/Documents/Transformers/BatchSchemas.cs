using Cablewright.Contract;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>
/// Gives the lines of a batch the schema of one item, as OpenAPI 3.1 has no words for a row of them, and its array its limits.
/// </summary>
internal static class BatchSchemas
{
    /// <summary>Describes the body and the answer of a batch.</summary>
    public static void Describe(OpenApiOperation operation)
    {
        operation.RequestBody!.Content![JsonMediaType.Lines] = Line(operation.RequestBody.Content[JsonMediaType.Lines]);
        IDictionary<string, OpenApiMediaType> answers = ((OpenApiResponse)operation.Responses!["200"]).Content!;
        answers[JsonMediaType.Lines] = Line(answers[JsonMediaType.Lines]);
        ((OpenApiSchema)operation.RequestBody.Content[JsonAnswer.ContentType].Schema!).MaxItems = ContractLimits.BatchBuilds;
    }

    private static OpenApiMediaType Line(OpenApiMediaType media) =>
        new() { Schema = media.Schema!.Items, Example = media.Example };
}
