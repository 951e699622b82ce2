using System.Text.Json.Serialization;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Kits;

/// <summary>
/// A build, and the kit that should serve it: either the kit itself or a shop's number for one that it keeps here.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record KitCheck
{
    /// <summary>
    /// The build. The kit's cables and fuses take the place of its own, so that sizes, metals and fuses stated here do not count;
    /// lengths, routes and loads do.
    /// </summary>
    public required Build Build { get; init; }

    /// <summary>The kit; left out where <c>shop</c> and <c>sku</c> name one.</summary>
    public Kit? Kit { get; init; }

    /// <summary>The shop that keeps the kit; needs one of its keys that may read kits.</summary>
    [Identifier("demo")]
    public string? Shop { get; init; }

    /// <summary>The shop's number for the kit.</summary>
    [Identifier("AK-150")]
    public string? Sku { get; init; }
}
