using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Takes out of each description the line ends that the source code's width put in.</summary>
internal sealed class FlowingText : IOpenApiDocumentTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(
        OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        foreach (IOpenApiSchema schema in document.Components!.Schemas!.Values)
        {
            Flow(schema);
            foreach (IOpenApiSchema member in schema.Properties?.Values ?? []) Flow(member);
        }

        return Task.CompletedTask;
    }

    private static void Flow(IOpenApiSchema schema) => schema.Description = schema.Description?.ReplaceLineEndings(" ");
}
