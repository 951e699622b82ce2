using System.Globalization;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Hosting;
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
            if (parameter.In == ParameterLocation.Path) DescribeRulesetId(parameter);
        }

        foreach (OpenApiMediaType body in (operation.RequestBody?.Content?.Values ?? []).OfType<OpenApiMediaType>())
            body.Example = described.Example?.Invoke();

        foreach ((string status, IOpenApiResponse response) in operation.Responses!)
            Describe((OpenApiResponse)response, status, described);
    }

    private static async Task<OpenApiParameter> Parameter(
        QueryParameter parameter, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        OpenApiSchema schema = await context.GetOrCreateSchemaAsync(parameter.Member.PropertyType, null, cancellation);
        NothingIsNull.Clean(schema);
        MemberSchemas.Describe(schema, parameter.Member);
        return new OpenApiParameter
        {
            Name = parameter.Name,
            In = ParameterLocation.Query,
            Required = parameter.IsRequired,
            Description = $"Stands for {parameter.Pointer} of the build. {schema.Description}".TrimEnd(),
            Schema = schema,
        };
    }

    private static void DescribeRulesetId(OpenApiParameter parameter)
    {
        parameter.Description = "The id of a ruleset, as GET /v1/rulesets lists it.";
        parameter.Example = RulesetLibrary.Newest.Id;
    }

    private static void Describe(OpenApiResponse response, string status, Operation described)
    {
        response.Headers = new Dictionary<string, IOpenApiHeader>
        {
            [Correlation.HeaderName] = TextHeader(
                "Names the request in the log of the service: what the caller sent in the same header (1 to 64 letters, "
                + "digits, `.`, `_`, `-`), "
                + "or a name made here."),
        };
        switch (status)
        {
            case "200":
                response.Description = described.Summary + ".";
                if (described.IsCacheable || described.Body is not null)
                    response.Headers["ETag"] = TextHeader("Identifies the answer (RFC 9110).");
                break;
            case "304":
                response.Description = "The caller already has this answer (If-None-Match).";
                response.Content?.Clear();
                break;
            default:
                int code = int.Parse(status, CultureInfo.InvariantCulture);
                response.Description = string.Join("; ", described.AllProblems()
                    .Where(kind => kind.Status == code)
                    .Select(kind => $"`{kind.Code}`: {kind.Title}. {kind.Meaning}"));
                break;
        }
    }

    private static OpenApiHeader TextHeader(string description) =>
        new() { Description = description, Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
}
