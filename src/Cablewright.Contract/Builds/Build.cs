using System.Text.Json.Serialization;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>
/// What is known of a vehicle's audio power wiring. A conductor or fuse that is left out is chosen; any other value that is left
/// out is assumed, and said so.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Build
{
    /// <summary>The ruleset to apply; the newest where left out. <c>GET /v1/rulesets</c> lists them.</summary>
    [Text(ContractLimits.RulesetIdLength, "2026.2")]
    public string? Ruleset { get; init; }

    /// <summary>The units in which sentences are written: <c>us</c> where left out.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>A name for people; it changes no figure. At most 100 characters.</summary>
    [Text(ContractLimits.NameLength, "Estate car, two amplifiers")]
    public string? Name { get; init; }

    /// <summary>The vehicle's electrical supply.</summary>
    public Vehicle? Vehicle { get; init; }

    /// <summary>The amplifiers, 1 to 64; without a shop's key at most 16.</summary>
    [Items(1, ContractLimits.Amplifiers)]
    public required IReadOnlyList<Amplifier> Amplifiers { get; init; }

    /// <summary>
    /// Facts about distribution blocks and bus bars, where there are any to state, at most 64. A junction that runs only name
    /// needs no entry.
    /// </summary>
    [Items(0, ContractLimits.Junctions)]
    public IReadOnlyList<Junction>? Junctions { get; init; }

    /// <summary>The conductors between places, 1 to 512; without a shop's key at most 96.</summary>
    [Items(1, ContractLimits.Runs)]
    public required IReadOnlyList<Run> Runs { get; init; }

    /// <summary>The caller's own limits.</summary>
    public Limits? Limits { get; init; }

    /// <summary>What may be chosen from where something is left open.</summary>
    public Sizing? Sizing { get; init; }

    /// <summary>How far off what is stated or assumed may be.</summary>
    public Tolerances? Tolerances { get; init; }

    /// <summary>
    /// What else to work out that costs more than one assessment; absent from the answer where it is not asked for.
    /// </summary>
    [Items(1, ContractLimits.Extras)]
    public IReadOnlyList<Extra>? Include { get; init; }
}
