using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>From what was found to the verdict.</summary>
internal static class Verdicts
{
    /// <summary>The verdict on what weighs so much, the heaviest alone; a pass where there is nothing.</summary>
    public static Verdict Of(IEnumerable<Severity> severities) => severities.DefaultIfEmpty(Severity.Info).Max() switch
    {
        Severity.Info => Verdict.Pass,
        Severity.Caution => Verdict.Caution,
        _ => Verdict.Fail,
    };
}
