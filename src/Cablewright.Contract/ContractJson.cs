using System.Text.Json.Serialization;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Audits;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Comparisons;
using Cablewright.Contract.Health;
using Cablewright.Contract.Kits;
using Cablewright.Contract.Problems;
using Cablewright.Contract.Reference;
using Cablewright.Contract.Rulesets;

namespace Cablewright.Contract;

/// <summary>How the shapes of the contract are written as JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    NumberHandling = JsonNumberHandling.Strict,
    RespectNullableAnnotations = true,
    AllowDuplicateProperties = false,
    MaxDepth = ContractLimits.JsonDepth)]
[JsonSerializable(typeof(Build))]
[JsonSerializable(typeof(Assessment))]
[JsonSerializable(typeof(BenchReport))]
[JsonSerializable(typeof(ConductorAudit))]
[JsonSerializable(typeof(Kit))]
[JsonSerializable(typeof(KitPage))]
[JsonSerializable(typeof(KitCheck))]
[JsonSerializable(typeof(KitAnswer))]
[JsonSerializable(typeof(KitMatchRequest))]
[JsonSerializable(typeof(KitMatches))]
[JsonSerializable(typeof(IReadOnlyList<Build>))]
[JsonSerializable(typeof(IReadOnlyList<BatchAnswer>))]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(ConductorReference))]
[JsonSerializable(typeof(FuseReference))]
[JsonSerializable(typeof(BatteryReference))]
[JsonSerializable(typeof(ComparisonRequest))]
[JsonSerializable(typeof(Comparison))]
[JsonSerializable(typeof(SourceReference))]
[JsonSerializable(typeof(RulesetList))]
[JsonSerializable(typeof(RulesetDetail))]
[JsonSerializable(typeof(HealthReport))]
public sealed partial class ContractJson : JsonSerializerContext;
