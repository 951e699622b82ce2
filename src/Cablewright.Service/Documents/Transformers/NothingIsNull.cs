using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Takes null out of every schema: a request that leaves something open leaves the member out, and so does an answer.</summary>
internal sealed class NothingIsNull : IOpenApiDocumentTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        foreach (IOpenApiSchema schema in document.Components?.Schemas?.Values ?? []) Clean(schema as OpenApiSchema);
        return Task.CompletedTask;
    }

    private static void Clean(OpenApiSchema? schema)
    {
        if (schema is null) return;
        schema.Type &= ~JsonSchemaType.Null;
        if (schema.Enum is { } words) schema.Enum = [.. words.Where(word => word is not null)];
        Clean(schema.Items as OpenApiSchema);
        foreach ((string name, IOpenApiSchema member) in schema.Properties?.ToArray() ?? [])
        {
            schema.Properties![name] = Unwrapped(member);
            Clean(schema.Properties[name] as OpenApiSchema);
        }
    }

    /// <summary>The schema itself of one that is "null or that schema".</summary>
    private static IOpenApiSchema Unwrapped(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema { OneOf: { Count: 2 } choices } choice) return schema;
        IOpenApiSchema kept = choices.Single(candidate => candidate.Type != JsonSchemaType.Null);
        if (kept is OpenApiSchemaReference reference) reference.Description = choice.Description;
        return kept;
    }
}
