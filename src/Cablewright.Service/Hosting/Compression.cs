using System.IO.Compression;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Microsoft.AspNetCore.Http.Headers;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Net.Http.Headers;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Compresses answers for callers that accept it. Over TLS that is safe here, though the length of a compressed answer tells
/// something of its content: a browser adds no credentials by itself, so that no other page can have a shop's things answered
/// beside text of its own choice, and keys stand in no answer.
/// </summary>
internal static class Compression
{
    /// <summary>Sets it up; the first is preferred where a caller accepts several alike.</summary>
    public static void Add(IServiceCollection services)
    {
        services.AddResponseCompression(compression =>
        {
            compression.EnableForHttps = true;
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
            compression.MimeTypes =
                [.. ResponseCompressionDefaults.MimeTypes, JsonMediaType.Lines, ProblemAnswer.ContentType, "image/svg+xml"];
        });
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Fastest);
        services.Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Fastest);
    }

    /// <summary>Applies it to all answers but those of which the tag comes back in <c>If-Match</c>.</summary>
    public static void Use(WebApplication app)
    {
        app.Use(WeakenTag);
        app.UseWhen(
            context => context.GetEndpoint()?.Metadata.GetMetadata<Operation>() is not { IsState: true },
            compressed => compressed.UseResponseCompression());
    }

    /// <summary>
    /// A tag that stands for compressed and plain bytes alike is weak (RFC 9110, 8.8.1). <c>If-None-Match</c> compares weakly,
    /// so that it serves for either.
    /// </summary>
    private static Task WeakenTag(HttpContext context, RequestDelegate next)
    {
        context.Response.OnStarting(() =>
        {
            ResponseHeaders headers = context.Response.GetTypedHeaders();
            if (headers.ETag is { IsWeak: false } tag && context.Response.Headers.ContentEncoding.Count > 0)
                headers.ETag = new EntityTagHeaderValue(tag.Tag, isWeak: true);
            return Task.CompletedTask;
        });
        return next(context);
    }
}
