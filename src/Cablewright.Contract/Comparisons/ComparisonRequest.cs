using System.Text.Json.Serialization;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Comparisons;

/// <summary>Builds to be put side by side.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record ComparisonRequest
{
    /// <summary>Two to six builds, without <c>include</c>; their runs and amplifiers are matched by id.</summary>
    [Items(ContractLimits.FewestCompared, ContractLimits.MostCompared)]
    public required IReadOnlyList<Build> Builds { get; init; }
}
