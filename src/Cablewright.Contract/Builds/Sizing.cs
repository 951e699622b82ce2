using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Contract.Words;

namespace Cablewright.Contract.Builds;

/// <summary>What may be chosen from where something is left open.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Sizing
{
    /// <summary>The metals to choose from; copper where left out. A conductor given without a metal is of the first.</summary>
    [Items(1, ContractLimits.Materials)]
    public IReadOnlyList<Material>? Materials { get; init; }

    /// <summary>The sizes to choose from, at most 64; the trade's usual ones where left out.</summary>
    [ConductorSize]
    [Items(1, ContractLimits.Sizes)]
    public IReadOnlyList<string>? Sizes { get; init; }
}
