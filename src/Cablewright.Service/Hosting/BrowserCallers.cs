using Cablewright.Service.Kits;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Hosting;

/// <summary>Which web pages may call the service from a browser (CORS); none unless the setting lists them.</summary>
internal static class BrowserCallers
{
    /// <summary>The setting: origins such as <c>https://shop.example</c>, parted by commas.</summary>
    public const string Setting = "Cablewright:AllowedOrigins";

    /// <summary>
    /// What a page may send; the last two name a trace of its own (W3C Trace Context), which libraries add to every call.
    /// </summary>
    private static readonly string[] Accepted =
    [
        HeaderNames.Accept, HeaderNames.Authorization, HeaderNames.ContentType, HeaderNames.IfMatch, HeaderNames.IfNoneMatch,
        Correlation.HeaderName, HeaderNames.TraceParent, HeaderNames.TraceState,
    ];

    private static readonly TimeSpan PreflightIsKept = TimeSpan.FromHours(1);

    /// <summary>Sets the list up.</summary>
    public static void Add(WebApplicationBuilder builder)
    {
        string[] origins = Origins(builder.Configuration);
        builder.Services.AddCors(cors => cors.AddDefaultPolicy(policy => policy
            .WithOrigins(origins)
            .WithMethods(HttpMethods.Get, HttpMethods.Post, HttpMethods.Put, HttpMethods.Delete)
            .WithHeaders(Accepted)
            .WithExposedHeaders("Age", "ETag", "Location", "Retry-After", Correlation.HeaderName, CatalogueState.RevisionHeader)
            .SetPreflightMaxAge(PreflightIsKept)));
    }

    /// <summary>Applies it where there is a list.</summary>
    public static void Use(WebApplication app)
    {
        if (AreListed(app.Configuration)) app.UseCors();
    }

    /// <summary>Whether there is a list.</summary>
    public static bool AreListed(IConfiguration configuration) => Origins(configuration).Length > 0;

    private static string[] Origins(IConfiguration configuration) => (configuration[Setting] ?? "").Split(
        ',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
