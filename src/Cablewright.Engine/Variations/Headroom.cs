using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Variations;

/// <summary>By how much all amplifiers could be larger, the wiring left as it is, until a rule fails.</summary>
/// <remarks>
/// Method: doubling until a rule fails, or halving until none does, then halving the interval. More power asks more of every
/// conductor and every fuse, so what fails at one factor fails at a larger one.
/// </remarks>
internal static class Headroom
{
    private const double MostFactor = 16;
    private const double LeastFactor = 1.0 / 64;
    private const double Precision = 1e-3;

    /// <summary>The headroom of a build.</summary>
    /// <param name="frozen">The build with every choice stated.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work.</param>
    /// <returns>The largest factor at which no rule fails, and the build at the first at which one does.</returns>
    public static (double Factor, Variant? Failing) Of(Build frozen, Ruleset ruleset, WorkMeter meter)
    {
        Variant? failing = null;
        double passes = Stands(1) ? 1 : 0, fails = passes == 1 ? 2 : 1;
        if (passes == 1)
        {
            while (fails <= MostFactor && Stands(fails)) (passes, fails) = (fails, fails * 2);
            if (fails > MostFactor) return (MostFactor, null);
        }
        else
        {
            for (double factor = fails / 2; factor >= LeastFactor; factor /= 2)
            {
                if (Stands(factor))
                {
                    passes = factor;
                    break;
                }

                fails = factor;
            }
        }

        while (passes > 0 && fails - passes > Precision * passes)
        {
            double middle = (passes + fails) / 2;
            if (Stands(middle)) passes = middle;
            else fails = middle;
        }

        return (passes, failing);

        bool Stands(double factor)
        {
            var variant = Variant.Of(Scaled(frozen, factor), ruleset, meter);
            if (!variant.Stands) failing = variant;
            return variant.Stands;
        }
    }

    private static Build Scaled(Build build, double factor) => build with
    {
        Amplifiers =
            [.. build.Amplifiers.Select(amplifier => amplifier with
            {
                RatedOutputWatts = amplifier.RatedOutputWatts * factor,
                RatedInputAmps = amplifier.RatedInputAmps * factor,
                OnBoardFuseAmps = amplifier.OnBoardFuseAmps * factor,
            })],
    };
}
