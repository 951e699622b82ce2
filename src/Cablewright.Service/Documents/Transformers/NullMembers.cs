using Cablewright.Vocabulary;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>
/// Lets null stand where a request may leave a member out, which says the same, and nowhere else: answers write no nulls.
/// </summary>
internal sealed class NullMembers : IOpenApiDocumentTransformer
{
    private const string AnyJson = nameof(System.Text.Json.Nodes.JsonNode);

    /// <inheritdoc/>
    public async Task TransformAsync(
        OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        IDictionary<string, IOpenApiSchema> shapes = document.Components!.Schemas!;
        shapes.Remove(AnyJson);
        HashSet<string> sent = SentShapes(document);
        foreach ((string name, IOpenApiSchema shape) in shapes)
        {
            var schema = (OpenApiSchema)shape;
            Clean(schema);
            if (sent.Contains(name)) AllowNulls(schema, document);
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

    /// <summary>The names of the shapes that stand in requests.</summary>
    private static HashSet<string> SentShapes(OpenApiDocument document)
    {
        HashSet<string> sent = [];
        foreach (OpenApiOperation operation in document.Paths.Values.SelectMany(path => path.Operations!.Values))
        {
            foreach (OpenApiMediaType body in operation.RequestBody?.Content?.Values ?? []) Visit(body.Schema);
        }

        return sent;

        void Visit(IOpenApiSchema? schema)
        {
            if (schema is OpenApiSchemaReference { Reference.Id: { } id } && !sent.Add(id)) return;
            foreach (IOpenApiSchema part in (schema?.Properties?.Values ?? []).Concat(schema?.OneOf ?? [])) Visit(part);
            if (schema?.Items is { } items) Visit(items);
        }
    }

    private static void AllowNulls(OpenApiSchema schema, OpenApiDocument document)
    {
        foreach ((string name, IOpenApiSchema member) in schema.Properties?.ToArray() ?? [])
        {
            if (schema.Required?.Contains(name) != true) schema.Properties![name] = OrNull(member, document);
        }
    }

    private static OpenApiSchema OrNull(IOpenApiSchema member, OpenApiDocument document)
    {
        if (member is OpenApiSchema own)
        {
            own.Type |= JsonSchemaType.Null;
            return own;
        }

        string id = ((OpenApiSchemaReference)member).Reference.Id!;
        return new OpenApiSchema
        {
            Description = member.Description,
            OneOf = [new OpenApiSchemaReference(id, document), new OpenApiSchema { Type = JsonSchemaType.Null }],
        };
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
