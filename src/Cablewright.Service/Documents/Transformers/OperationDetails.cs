using System.Globalization;
using System.Text.Json.Nodes;
using Cablewright.Service.Answers;
using Cablewright.Service.Hosting;
using Cablewright.Service.Json;
using Cablewright.Service.Kits;
using Cablewright.Storage.Keys;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Writes into each operation its query parameters and what each of its answers means.</summary>
internal sealed class OperationDetails : IOpenApiOperationTransformer
{
    /// <inheritdoc/>
    public async Task TransformAsync(
        OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        Operation described = context.Description.ActionDescriptor.EndpointMetadata.OfType<Operation>().Single();
        operation.Summary = described.Summary;
        foreach (QueryParameter parameter in described.Query)
            (operation.Parameters ??= []).Add(await Parameter(parameter, context, cancellationToken));
        foreach (OpenApiParameter parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            if (parameter.In == ParameterLocation.Path)
                DescribePath(parameter, described.Path.Single(part => part.Name == parameter.Name));
        }

        ConditionDetails.Describe(operation, described);
        SecurityDetails.Describe(operation, described, context.Document!);
        foreach ((string type, OpenApiMediaType body) in operation.RequestBody?.Content?.ToArray() ?? [])
        {
            JsonNode? example = described.Body!.Example();
            body.Example = described.IsBatch && type != JsonMediaType.Lines ? new JsonArray(example) : example;
        }

        foreach ((string status, IOpenApiResponse response) in operation.Responses!)
            Describe((OpenApiResponse)response, status, described);
        if (described.IsBatch) BatchSchemas.Describe(operation);
    }

    private static async Task<OpenApiParameter> Parameter(
        QueryParameter parameter, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        OpenApiSchema schema = await context.GetOrCreateSchemaAsync(parameter.Member.PropertyType, null, cancellation);
        NullMembers.Clean(schema);
        MemberSchemas.Describe(schema, parameter.Member);
        return new OpenApiParameter
        {
            Name = parameter.Name,
            In = ParameterLocation.Query,
            Required = parameter.IsRequired,
            Description = parameter.Description
                ?? $"Stands for {parameter.Pointer} of the build. {schema.Description}".TrimEnd(),
            Schema = schema,
        };
    }

    private static void DescribePath(OpenApiParameter parameter, PathParameter part)
    {
        parameter.Description = part.Description;
        parameter.Example = part.Example;
    }

    private static void Describe(OpenApiResponse response, string status, Operation described)
    {
        response.Headers = new Dictionary<string, IOpenApiHeader>();
        if (!described.IsShared || status[0] is '4' or '5')
            response.Headers[Correlation.HeaderName] = TextHeader(
                "Names the request in the log of the service: what the caller sent in the same header (1 to 64 letters, digits, "
                + "`.`, `_`, `-`), or a name made here.");
        switch (status)
        {
            case "204":
                response.Description = described.Summary + ": done.";
                break;
            case "200" or "201":
                response.Description = described.Summary + ".";
                if (described.IsDrawn) DescribeForms(response);
                if (described.IsCacheable || described is { Body: not null, IsBatch: false })
                    response.Headers["ETag"] = TextHeader("Identifies the answer (RFC 9110).");
                if (status == "201") response.Headers["Location"] = TextHeader("Where it can be fetched.");
                if (described.Scope is KeyScopes.KitsRead or KeyScopes.KitsWrite)
                {
                    response.Headers[CatalogueState.RevisionHeader] =
                        TextHeader("The state of the catalogue that the answer rests on; it grows with every change.");
                    response.Headers["Age"] = TextHeader(
                        "How many whole seconds ago the database was last asked whether that state still holds: without the "
                        + "database reading goes on from memory (RFC 9111, 5.1).");
                }

                break;
            case "304":
                response.Description = "The caller already has this answer (If-None-Match).";
                response.Headers["ETag"] = TextHeader("Identifies the answer (RFC 9110).");
                response.Content?.Clear();
                break;
            default:
                int code = int.Parse(status, CultureInfo.InvariantCulture);
                if (described.AllProblems().Any(kind => kind.Status == code && kind.RetryAfterSeconds is not null))
                    response.Headers["Retry-After"] = TextHeader("After how many seconds to try again.");
                response.Description = string.Join("; ", described.AllProblems()
                    .Where(kind => kind.Status == code)
                    .Select(kind => $"`{kind.Code}`: {kind.Title}. {kind.Meaning}"));
                break;
        }
    }

    /// <summary>A drawing and a page are texts, not the contract's shape.</summary>
    private static void DescribeForms(OpenApiResponse response)
    {
        foreach (string form in (string[])[AnswerForms.Drawing, AnswerForms.Sheet])
            response.Content![form] = new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
    }

    private static OpenApiHeader TextHeader(string description) =>
        new() { Description = description, Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
}
