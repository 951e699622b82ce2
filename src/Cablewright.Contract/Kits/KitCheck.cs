using System.Text.Json.Serialization;
using Cablewright.Contract.Builds;

namespace Cablewright.Contract.Kits;

/// <summary>A kit and the build that it should serve.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record KitCheck
{
    /// <summary>
    /// The build. The kit's cables and fuses take the place of its own, so that sizes, metals and fuses stated here do not count;
    /// lengths, routes and loads do.
    /// </summary>
    public required Build Build { get; init; }

    /// <summary>The kit.</summary>
    public required Kit Kit { get; init; }
}
