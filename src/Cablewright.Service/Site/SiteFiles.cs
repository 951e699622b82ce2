using System.Reflection;
using System.Security.Cryptography;
using Cablewright.Service.Answers;
using Cablewright.Service.Hosting;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Site;

/// <summary>
/// Serves the try page at the bare address and the widget for other people's pages. Their files are in the assembly, so that the
/// folder that the service is started in does not matter.
/// </summary>
internal static class SiteFiles
{
    /// <summary>The page's own file, which answers at the bare address.</summary>
    private const string Index = "index.html";

    private const string WidgetFolder = "widget/";

    /// <summary>A script of the widget stands below its version and never changes; a page that pins its hash keeps working.</summary>
    private const string ForEver = "public, max-age=31536000, immutable";

    /// <summary>
    /// The page runs its own scripts and asks this service; drawings are shown as images. Nothing is made of text
    /// (Trusted Types), so that a name in a build cannot become markup.
    /// </summary>
    private static readonly PagePolicy OfPage = new(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types 'none'");

    private static readonly Dictionary<string, string> Forms = new()
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json",
        [".svg"] = "image/svg+xml",
    };

    /// <summary>Serves every file; they are no part of the contract.</summary>
    public static void MapSite(this IEndpointRouteBuilder routes)
    {
        Assembly assembly = typeof(SiteFiles).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(IsOfSite))
        {
            byte[] bytes = Read(assembly, name);
            string path = name.Replace('\\', '/')["site:".Length..];
            RouteHandlerBuilder route = path.StartsWith(WidgetFolder, StringComparison.Ordinal)
                ? routes.MapGet("/" + path, (HttpContext context) => OfWidget(context, path, bytes))
                : routes.MapGet(path == Index ? "/" : "/" + path, (HttpContext context) => Answer(context, path, bytes))
                    .WithMetadata(OfPage);
            route.ExcludeFromDescription();
        }
    }

    private static bool IsOfSite(string name) => name.StartsWith("site:", StringComparison.Ordinal);

    private static FileContentHttpResult OfWidget(HttpContext context, string path, byte[] bytes)
    {
        // Any page may load the script; one with an integrity hash must be allowed to read it (CORS).
        context.Response.Headers.AccessControlAllowOrigin = "*";
        context.Response.Headers["Cross-Origin-Resource-Policy"] = "cross-origin";
        FileContentHttpResult answer = Answer(context, path, bytes);
        if (Path.GetExtension(path) == ".js") context.Response.Headers.CacheControl = ForEver;
        return answer;
    }

    private static FileContentHttpResult Answer(HttpContext context, string path, byte[] bytes)
    {
        context.Response.Headers.CacheControl = Caching.AskAgain;
        string tag = Convert.ToHexStringLower(SHA256.HashData(bytes));
        return TypedResults.Bytes(bytes, Forms[Path.GetExtension(path)], entityTag: new EntityTagHeaderValue($"\"{tag}\""));
    }

    private static byte[] Read(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
