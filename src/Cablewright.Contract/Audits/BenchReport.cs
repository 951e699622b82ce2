using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Audits;

/// <summary>
/// What was measured of a cable on the bench: at least one of strands, resistance and mass. Two tell its metal, three leave
/// least in doubt.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record BenchReport
{
    /// <summary>The ruleset to apply; the newest where left out. <c>GET /v1/rulesets</c> lists them.</summary>
    [Text(ContractLimits.RulesetIdLength, "2026.2")]
    public string? Ruleset { get; init; }

    /// <summary>The units in which sentences are written: <c>us</c> where left out.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>What the label says, where it says anything.</summary>
    public CableClaim? Claim { get; init; }

    /// <summary>The strands, counted and measured.</summary>
    public StrandMeasurement? Strands { get; init; }

    /// <summary>The resistance of a length.</summary>
    public ResistanceMeasurement? Resistance { get; init; }

    /// <summary>The mass of a length of bare conductor.</summary>
    public MassMeasurement? Mass { get; init; }

    /// <summary>Temperature rating of the insulation.</summary>
    [Quantity(QuantityKind.Temperature, "60 C", "125 C", "105 C")]
    public string? InsulationRating { get; init; }
}
