using Cablewright.Contract.Assessments;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Kits;

/// <summary>Gathers what is wrong with a kit, and what that makes of it.</summary>
internal sealed class KitIssues(Ruleset ruleset)
{
    private readonly List<Finding> findings = [];

    /// <summary>What was found, the worst first.</summary>
    public IReadOnlyList<Finding> Findings => [.. findings.OrderByDescending(finding => finding.Severity)];

    /// <summary>The worst that was found makes of the kit.</summary>
    public KitVerdict Verdict { get; private set; }

    public void Add(
        KitVerdict verdict,
        string code,
        Severity severity,
        string pointer,
        Message message,
        string remedy,
        string workings,
        double? measured = null,
        double? limit = null,
        string? unit = null,
        FigureOf? rule = null)
    {
        if (verdict > Verdict) Verdict = verdict;
        Figure basis = rule?.Invoke(ruleset) ?? ruleset.Kit.Complete;
        findings.Add(new Finding
        {
            Code = code,
            Severity = severity,
            Pointer = pointer,
            Message = message.Text,
            Params = message.Params.OrNone,
            Measured = measured,
            Limit = limit,
            Unit = unit,
            Rule = basis.Id,
            Source = basis.Citation,
            Remedy = remedy,
            Workings = workings,
        });
    }

    /// <summary>Too few pieces of a part, or none.</summary>
    /// <param name="what">What the part is called.</param>
    /// <param name="holds">How many the kit holds.</param>
    /// <param name="needs">How many are needed.</param>
    /// <param name="message">Says so.</param>
    public void AddCount(string what, int holds, int needs, Message message) => Add(
        KitVerdict.ServesWithChange,
        KitCodes.PartMissing,
        Severity.Caution,
        "/kit/parts",
        message,
        $"buy {needs - holds} more: {what}",
        $"{holds} < {needs}",
        holds,
        needs,
        "1");
}
