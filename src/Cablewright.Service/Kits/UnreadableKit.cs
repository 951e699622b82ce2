using Cablewright.Service.Problems;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>Says which kept kit cannot be read, with the tag that replaces it.</summary>
internal sealed class UnreadableKit(StoredKit kit) : IResult
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.Headers.ETag = $"\"{kit.Tag}\"";
        ProblemKind kind = ProblemKinds.KitUnreadable;
        return new ProblemAnswer(kind, $"The kit {kit.Sku} cannot be read. {kind.Meaning}", []).ExecuteAsync(httpContext);
    }
}
