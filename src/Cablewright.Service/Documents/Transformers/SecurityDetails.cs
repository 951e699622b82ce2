using Cablewright.Storage.Keys;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Writes which key an operation needs.</summary>
internal static class SecurityDetails
{
    private const string SchemeName = "shopKey";

    /// <summary>The scheme that every key belongs to.</summary>
    public static void AddScheme(OpenApiDocument document)
    {
        document.Components ??= new OpenApiComponents();
        document.Components.SecuritySchemes = new Dictionary<string, IOpenApiSecurityScheme>
        {
            [SchemeName] = new OpenApiSecurityScheme
            {
                Type = SecuritySchemeType.Http,
                Scheme = "bearer",
                Description =
                    "A shop's key. Its scopes (kits:read, kits:write, records:read, records:write) say what it may do, with "
                    + "its own shop's things only. The operator of the service makes and revokes keys.",
            },
        };
    }

    /// <summary>What one operation needs.</summary>
    public static void Describe(OpenApiOperation operation, Operation described, OpenApiDocument document)
    {
        if (described.Scope == KeyScopes.None) return;
        var key = new OpenApiSecurityRequirement
        {
            [new OpenApiSecuritySchemeReference(SchemeName, document)] = [described.Scope.Words()],
        };
        operation.Security = described.IsKeyOptional ? [[], key] : [key];
    }
}
