using Cablewright.Contract;
using Cablewright.Service.Documents.Transformers;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents;

/// <summary>Publishes the contract: <c>/openapi/v1.json</c>, and <c>/docs</c> to browse it.</summary>
internal static class ContractPages
{
    private const string DocumentName = ContractDocument.Name;
    private const string DocumentPath = "/openapi/v1.json";

    /// <summary>Sets up the generation of the contract from the routes and the contract's types.</summary>
    public static void AddContract(this IServiceCollection services)
    {
        services.ConfigureHttpJsonOptions(http =>
        {
            http.SerializerOptions.TypeInfoResolverChain.Insert(0, ContractJson.Default);
            http.SerializerOptions.NumberHandling = ContractJson.Default.Options.NumberHandling;
            http.SerializerOptions.RespectNullableAnnotations = true;
        });
        services.AddSingleton<ContractDocument>();
        services.AddOpenApi(DocumentName, document =>
        {
            document.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            document.AddSchemaTransformer<MemberSchemas>();
            document.AddOperationTransformer<OperationDetails>();
            document.AddDocumentTransformer<Overview>();
            document.AddDocumentTransformer<NullMembers>();
            document.AddDocumentTransformer<FlowingText>();
        });
    }

    /// <summary>
    /// Serves the pages that show the contract; they load nothing from elsewhere, a validator's badge included.
    /// </summary>
    public static void UseContractPages(this WebApplication app)
    {
        app.UseWhen(
            context =>
                context.Request.Path.StartsWithSegments("/docs")
                    && context.Request.Path.Value!.Contains("favicon", StringComparison.Ordinal),
            icons => icons.Run(NoIcon));
        app.UseSwaggerUI(Pages);
    }

    /// <summary>The pages' own icon is the mark of the library that draws them.</summary>
    private static Task NoIcon(HttpContext context)
    {
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    private static void Pages(Swashbuckle.AspNetCore.SwaggerUI.SwaggerUIOptions pages)
    {
        pages.RoutePrefix = "docs";
        pages.DocumentTitle = "Cablewright";
        pages.EnableValidator("none");
        pages.HeadContent = "<style>.swagger-ui .topbar { display: none !important }</style>";
        pages.SwaggerEndpoint(".." + DocumentPath, "Cablewright v1");
    }

    /// <summary>Serves the contract itself.</summary>
    public static void MapContract(this WebApplication app) =>
        app.MapGet(DocumentPath, ContractDocument.Answer).ExcludeFromDescription();
}
