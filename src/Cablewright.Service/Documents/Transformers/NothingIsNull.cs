using Cablewright.Vocabulary;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>
/// Takes null out of every schema: a request that leaves something open leaves the member out, and so does an answer.
/// </summary>
internal sealed class NothingIsNull : IOpenApiDocumentTransformer
{
    private const string AnyJson = nameof(System.Text.Json.Nodes.JsonNode);

    /// <inheritdoc/>
    public async Task TransformAsync(
        OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        IDictionary<string, IOpenApiSchema> shapes = document.Components!.Schemas!;
        shapes.Remove(AnyJson);
        foreach ((string name, IOpenApiSchema shape) in shapes)
        {
            var schema = (OpenApiSchema)shape;
            Clean(schema);
            schema.Description ??= await DescriptionOf(name, context, cancellationToken);
        }
    }

    /// <summary>The framework describes a list of words only where a member of that very type is never null.</summary>
    private static async Task<string?> DescriptionOf(
        string words, OpenApiDocumentTransformerContext context, CancellationToken cancellation)
    {
        Type type = typeof(Side).Assembly.GetType($"{typeof(Side).Namespace}.{words}", throwOnError: true)!;
        return (await context.GetOrCreateSchemaAsync(type, null, cancellation)).Description;
    }

    /// <summary>Takes it out of one schema and its members.</summary>
    public static void Clean(OpenApiSchema? schema)
    {
        if (schema is null) return;
        schema.Type &= ~JsonSchemaType.Null;
        if (schema.Enum is { } words) NameWords(schema, words);
        Clean(schema.Items as OpenApiSchema);
        foreach ((string name, IOpenApiSchema member) in schema.Properties?.ToArray() ?? [])
        {
            schema.Properties![name] = Unwrapped(member);
            Clean(schema.Properties[name] as OpenApiSchema);
        }
    }

    private static OpenApiSchema AnyValue(string? description) => new() { Description = description, Examples = [16] };

    private static void NameWords(OpenApiSchema schema, IList<System.Text.Json.Nodes.JsonNode> words)
    {
        schema.Enum = [.. words.Where(word => word is not null)];
        schema.Type = JsonSchemaType.String;
        schema.Examples = [schema.Enum[0].DeepClone()];
    }

    /// <summary>The schema itself of one that is "null or that schema".</summary>
    private static IOpenApiSchema Unwrapped(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema { OneOf: { Count: 2 } choices } choice) return schema;
        IOpenApiSchema kept = choices.Single(candidate => candidate.Type != JsonSchemaType.Null);
        return kept is OpenApiSchemaReference { Reference.Id: AnyJson } any ? AnyValue(any.Description) : kept;
    }
}
