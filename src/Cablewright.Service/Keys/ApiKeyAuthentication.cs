using Cablewright.Service.Documents;
using Cablewright.Service.Kits;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Keys;

/// <summary>Finds out who sends a request, and lets pass what the key allows.</summary>
internal static class ApiKeyAuthentication
{
    private const string Scheme = "Bearer ";

    /// <summary>
    /// Looks the key up in memory: no request waits for the database to learn whose it is. Other schemes than Bearer are for
    /// others.
    /// </summary>
    public static Task Identify(HttpContext context, RequestDelegate next)
    {
        string sent = context.Request.Headers.Authorization.ToString();
        if (sent.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
            context.Features.Set(Recognise(context.RequestServices, sent[Scheme.Length..].Trim()));
        return next(context);
    }

    /// <summary>Answers for an operation that needs a key what the key does not allow.</summary>
    public static Task Admit(HttpContext context, RequestDelegate next)
    {
        Operation? operation = context.GetEndpoint()?.Metadata.GetMetadata<Operation>();
        if (operation is not { Scope: not KeyScopes.None, IsKeyOptional: false }) return next(context);
        string? shop = context.GetRouteValue(KitAddress.ShopName) as string;
        return Caller.Of(context).Refusal(shop, operation.Scope)?.ExecuteAsync(context) ?? next(context);
    }

    /// <summary>
    /// Without the database a known key opens its shop for a while yet; it may have been revoked, and one that is not known
    /// may have been made, since the database was last seen.
    /// </summary>
    private static Caller Recognise(IServiceProvider services, string text)
    {
        Catalogues catalogues = services.GetRequiredService<Catalogues>();
        if (!catalogues.IsTrusted) return new(null, ProblemKinds.CatalogueUnavailable);
        ShopKey? key = catalogues.Newest?.FindKey(text);
        if (key is null && !catalogues.IsCurrent) return new(null, ProblemKinds.CatalogueUnavailable);
        return key?.IsValidAt(services.GetRequiredService<TimeProvider>().GetUtcNow()) == true
            ? new(key, null)
            : new(null, ProblemKinds.KeyRefused);
    }
}
