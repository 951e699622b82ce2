using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Writes on which tags a request may depend (RFC 9110, 13.1).</summary>
internal static class ConditionDetails
{
    private const string Tag = "\"0b4af9c1d2e3\"";

    /// <summary>What one operation takes.</summary>
    public static void Describe(OpenApiOperation operation, Operation described)
    {
        operation.Parameters ??= [];
        if (described.IsCacheable)
            operation.Parameters.Add(Header(
                "If-None-Match", "The ETag of the answer that the caller has; 304 where it still holds.", Tag));
        if (!described.IsConditional) return;
        operation.Parameters.Add(Header("If-Match", "The ETag of the state that is to be replaced or deleted.", Tag));
        if (described.Body is not null)
            operation.Parameters.Add(Header("If-None-Match", "* to write only where there is nothing yet.", "*"));
    }

    private static OpenApiParameter Header(string name, string description, string example) => new()
    {
        Name = name,
        In = ParameterLocation.Header,
        Description = description,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Example = example,
    };
}
