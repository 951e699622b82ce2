using System.Reflection;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Site;

/// <summary>A file of the try page or the widget.</summary>
/// <param name="Path">Its path below the bare address, without a slash before it.</param>
/// <param name="Bytes">What is in it.</param>
internal sealed record SiteFile(string Path, byte[] Bytes)
{
    /// <summary>How the build names the files in the assembly.</summary>
    private const string Prefix = "site:";

    private static readonly Dictionary<string, string> Forms = new()
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json",
        [".svg"] = "image/svg+xml",
    };

    private readonly EntityTagHeaderValue tag = new($"\"{Convert.ToHexStringLower(SHA256.HashData(Bytes))}\"");

    /// <summary>Whether it is a script.</summary>
    public bool IsScript => System.IO.Path.GetExtension(Path) == ".js";

    /// <summary>All of them.</summary>
    public static IEnumerable<SiteFile> All()
    {
        Assembly assembly = typeof(SiteFile).Assembly;
        return assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => new SiteFile(name[Prefix.Length..].Replace('\\', '/'), Read(assembly, name)));
    }

    /// <summary>Answers with it, or says that the caller has it already.</summary>
    public FileContentHttpResult Answer(HttpContext context, string cacheControl)
    {
        context.Response.Headers.CacheControl = cacheControl;
        return TypedResults.Bytes(Bytes, Forms[System.IO.Path.GetExtension(Path)], entityTag: tag);
    }

    private static byte[] Read(Assembly assembly, string name)
    {
        using Stream stream = assembly.GetManifestResourceStream(name)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
