using Cablewright.Reports.Faults;
using Cablewright.Service.Assessments;
using Cablewright.Service.Audits;
using Cablewright.Service.Comparisons;
using Cablewright.Service.Json;
using Cablewright.Service.Kits;
using Cablewright.Service.Quantities;
using Cablewright.Service.Queries;
using Cablewright.Service.Rulesets;
using Cablewright.Service.Validation;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Problems;

/// <summary>Every code that a problem's <c>errors</c> can carry.</summary>
internal static class FaultKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<CodeMeaning> All { get; } =
    [
        .. CodeMeaning.In(typeof(ShapeCodes)), .. CodeMeaning.In(typeof(QueryCodes)), .. CodeMeaning.In(typeof(QuantityCodes)),
        .. CodeMeaning.In(typeof(ContentCodes)), .. CodeMeaning.In(typeof(RulesetCodes)), .. CodeMeaning.In(typeof(BuildCodes)),
        .. BuildFaultWriter.Codes, .. CodeMeaning.In(typeof(ComparisonCodes)), .. CodeMeaning.In(typeof(KitCodes)),
        .. CodeMeaning.In(typeof(AuditCodes)),
    ];
}
