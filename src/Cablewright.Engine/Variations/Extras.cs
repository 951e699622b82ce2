using Cablewright.Engine.Answers;
using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Variations;

/// <summary>Adds to an answer what its build asks for beyond one assessment.</summary>
internal static class Extras
{
    public static Assessment Add(Assessment answer, Variant variant)
    {
        IReadOnlyList<Extra> wanted = variant.Build.Stated.Include;
        if (wanted.Count == 0) return answer;
        Build settled = SettledBuild.Of(variant.Build, variant.Sized.Evaluation.Decision);
        if (wanted.Contains(Extra.Headroom)) answer = answer with { Headroom = Headroom.Of(settled, variant.Build.Ruleset) };
        if (wanted.Contains(Extra.Robustness)) answer = answer with { Robustness = Robustness.Of(variant, settled) };
        return wanted.Contains(Extra.Alternatives) ? WithAlternatives(answer, variant) : answer;
    }

    private static Assessment WithAlternatives(Assessment answer, Variant variant)
    {
        IReadOnlyList<IReadOnlyList<AlternativeResult>?> alternatives = Alternatives.Of(variant);
        return answer with
        {
            Runs = [.. answer.Runs.Select((run, index) => run with { Alternatives = alternatives[index] })],
            Sizing = answer.Sizing is null ? null : answer.Sizing with { Frontier = TradeOff.Of(variant) },
        };
    }
}
