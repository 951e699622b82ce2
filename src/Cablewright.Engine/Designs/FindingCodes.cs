using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Designs;

/// <summary>Every kind of finding that an answer can carry.</summary>
public static class FindingCodes
{
    /// <summary>All of them, by code: of assessments, of audits and of kits.</summary>
    public static IReadOnlyList<CodeMeaning> All { get; } =
        [.. RuleBook.All.Select(rule => rule.Finding).Concat(AuditCodes.All).Concat(KitCodes.All)
            .OrderBy(code => code.Code, StringComparer.Ordinal)];
}
