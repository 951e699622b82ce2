using Cablewright.Service.Answers;
using Cablewright.Service.Hosting;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Cablewright.Service.Site;

/// <summary>
/// Serves the try page at the bare address and the widget for other people's pages. Their files are in the assembly, so that the
/// folder that the service is started in does not matter.
/// </summary>
internal static class SitePages
{
    private const string Index = "index.html";
    private const string WidgetFolder = "widget/";

    /// <summary>A script of the widget stands below its version and never changes: other pages pin its hash.</summary>
    private const string ForEver = "public, max-age=31536000, immutable";

    /// <summary>
    /// The page runs its own scripts and asks this service; drawings are shown as images. Nothing is made of text (Trusted
    /// Types), so that a name in a build cannot become markup.
    /// </summary>
    private static readonly PagePolicy OfPage = new(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; "
        + "trusted-types 'none'");

    /// <summary>Serves every file; they are no part of the contract.</summary>
    public static void MapSite(this IEndpointRouteBuilder routes)
    {
        foreach (SiteFile file in SiteFile.All())
        {
            RouteHandlerBuilder route = file.Path.StartsWith(WidgetFolder, StringComparison.Ordinal)
                ? routes.MapGet("/" + file.Path, (HttpContext context) => OfWidget(context, file))
                : routes.MapGet(file.Path == Index ? "/" : "/" + file.Path, (HttpContext context) => Own(context, file))
                    .WithMetadata(OfPage);
            route.ExcludeFromDescription();
        }
    }

    private static FileContentHttpResult Own(HttpContext context, SiteFile file) => file.Answer(context, Caching.AskAgain);

    /// <summary>Any page may load the widget, and one that pins its hash must be allowed to read it (CORS).</summary>
    private static FileContentHttpResult OfWidget(HttpContext context, SiteFile file)
    {
        context.Response.Headers.AccessControlAllowOrigin = "*";
        context.Response.Headers["Cross-Origin-Resource-Policy"] = "cross-origin";
        return file.Answer(context, file.IsScript ? ForEver : Caching.AskAgain);
    }
}
