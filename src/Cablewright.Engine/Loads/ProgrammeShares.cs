using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Loads;

/// <summary>How much of its full current an amplifier draws on a programme.</summary>
/// <remarks>
/// <para>Average output: p = P_avg / P_rated = 2 / 10^(CF/10), CF in decibels at clip onset (a sine: 3.01 dB, p = 1).</para>
/// <para>Average current over full current: a switching stage, idle + p; a linear one, √p, since its current follows the
/// amplitude; class H, straight on logarithmic scales between what was published at a third and an eighth of rated output, since
/// its rails follow the amplitude too; class A, 1. Heating goes by the root mean square, average times form factor, and never
/// above the full sine, for which an amplifier's own storage smooths the cycles.</para>
/// </remarks>
internal static class ProgrammeShares
{
    /// <summary>Average output over rated output.</summary>
    public static double OutputShare(double crestFactorDecibels) => Math.Min(1, 2 / Math.Pow(10, crestFactorDecibels / 10));

    /// <summary>Average current over full current.</summary>
    public static double Average(AmplifierClass kind, double outputShare, double idleShare, Ruleset ruleset) => kind switch
    {
        AmplifierClass.A => 1,
        AmplifierClass.D => Math.Min(1, idleShare + outputShare),
        AmplifierClass.H => OfClassH(outputShare, ruleset.Load.ClassHAtThird.Value, ruleset.Load.ClassHAtEighth.Value),
        _ => Math.Sqrt(outputShare),
    };

    private static double OfClassH(double outputShare, double atThird, double atEighth)
    {
        const double Third = 1.0 / 3, Eighth = 1.0 / 8;
        return outputShare >= Third
            ? Math.Pow(atThird, Math.Log(outputShare) / Math.Log(Third))
            : atThird * Math.Pow(atEighth / atThird, Math.Log(outputShare / Third) / Math.Log(Eighth / Third));
    }

    /// <summary>Root-mean-square current over full current.</summary>
    public static double Thermal(AmplifierClass kind, double outputShare, double idleShare, Ruleset ruleset) =>
        kind is AmplifierClass.A
            ? 1
            : Math.Min(1, Average(kind, outputShare, idleShare, ruleset) * ruleset.Load.FormFactor(kind).Value);
}
