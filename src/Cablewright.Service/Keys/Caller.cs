using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;

namespace Cablewright.Service.Keys;

/// <summary>Who sends a request, as far as the key tells.</summary>
/// <param name="Key">The valid key that was shown, if one was.</param>
/// <param name="Trouble">Why the key that was shown does not count.</param>
internal sealed record Caller(ShopKey? Key, ProblemKind? Trouble)
{
    private static readonly Caller Anonymous = new(null, null);

    /// <summary>The sender of a request.</summary>
    public static Caller Of(HttpContext context) => context.Features.Get<Caller>() ?? Anonymous;

    /// <summary>
    /// Why the caller may not do this to this shop's things; <c>null</c> where it may. Another shop's things are answered like
    /// things that are not there, whether they are or not.
    /// </summary>
    public ProblemAnswer? Refusal(string? shop, KeyScopes scope)
    {
        if (Key is null) return new ProblemAnswer(Trouble ?? ProblemKinds.KeyMissing);
        if (shop is not null && shop != Key.Shop)
            return ProblemAnswer.NotFound($"There is no shop \"{Excerpt.Of(shop)}\" for this key.");
        return Key.Scopes.HasFlag(scope) ? null : new ProblemAnswer(ProblemKinds.KeyWithoutRight);
    }
}
