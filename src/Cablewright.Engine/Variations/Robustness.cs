using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Results;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Variations;

/// <summary>Whether the verdict stays what it is when what was stated or assumed is a little off.</summary>
/// <remarks>
/// Method: every corner of the tolerances, all amplifiers, all runs and all surroundings off by the same share at once, the
/// wiring left as it is. Where a corner is worse than the build itself, the smallest set of tolerances that leads there by
/// itself is named: single ones are tried before pairs, pairs before three.
/// </remarks>
internal sealed class Robustness
{
    private static readonly int[] Directions = [-1, 1];

    private readonly Variant present;
    private readonly Build frozen;
    private readonly Ruleset ruleset;
    private readonly WorkMeter meter;
    private readonly CompleteTolerances tolerances;

    private Robustness(Variant present, Build frozen, WorkMeter meter)
    {
        this.meter = meter;
        this.present = present;
        this.frozen = frozen;
        ruleset = present.Build.Ruleset;
        tolerances = present.Build.Tolerances!;
    }

    /// <summary>The robustness of a build.</summary>
    /// <param name="present">The build as it is.</param>
    /// <param name="frozen">The same with every choice stated.</param>
    /// <param name="meter">Counts the work.</param>
    public static RobustnessResult Of(Variant present, Build frozen, WorkMeter meter) =>
        new Robustness(present, frozen, meter).Find();

    private RobustnessResult Find()
    {
        Verdict now = present.Verdict;
        Verdict worst = Corners(Enum.GetValues<Tolerance>()).Max(corner => Assess(corner).Verdict);
        if (worst <= now) return new RobustnessResult(now, null, null);
        foreach (Tolerance[] few in Subsets().OrderBy(subset => subset.Length))
        {
            foreach ((Tolerance What, int Way)[] corner in Corners(few))
            {
                Variant variant = Assess(corner);
                if (variant.Verdict == worst)
                    return new RobustnessResult(worst, Words(corner), RuleBook.Of(variant.Worst!.Value.Kind).Finding.Code);
            }
        }

        throw new InvalidOperationException("The corner that is worst has become better.");
    }

    private static IEnumerable<Tolerance[]> Subsets()
    {
        Tolerance[] all = Enum.GetValues<Tolerance>();
        return Enumerable.Range(1, (1 << all.Length) - 1).Select(set => all.Where((_, i) => (set >> i & 1) == 1).ToArray());
    }

    private static IEnumerable<(Tolerance, int)[]> Corners(Tolerance[] of)
    {
        IEnumerable<(Tolerance, int)[]> corners = [[]];
        foreach (Tolerance what in of)
            corners = corners.SelectMany(corner => Directions.Select(way => ((Tolerance, int)[])[.. corner, (what, way)]));
        return corners;
    }

    private Variant Assess((Tolerance What, int Way)[] corner)
    {
        Build moved = frozen;
        foreach ((Tolerance what, int way) in corner) moved = Move(moved, what, way);
        return Variant.Of(moved, ruleset, meter);
    }

    private Build Move(Build build, Tolerance what, int way) => what switch
    {
        Tolerance.Efficiency => build with
        {
            Amplifiers =
                [.. build.Amplifiers.Select((amplifier, index) => Move(amplifier, index, 1 + way * tolerances.EfficiencyShare))],
        },
        Tolerance.ChargingVoltage => build with
        {
            Vehicle = build.Vehicle with { ChargingVolts = present.Build.ChargingVolts + way * tolerances.ChargingVolts },
        },
        Tolerance.Length => build with
        {
            Runs = [.. build.Runs.Select(
                run => run with { LengthMetres = run.LengthMetres * (1 + way * tolerances.LengthShare) })],
        },
        _ => build with
        {
            Limits = build.Limits with
            {
                EngineBayCelsius = Air(build.Limits.EngineBayCelsius, ruleset.Heat.EngineBay) + way * tolerances.Kelvin,
                CabinCelsius = Air(build.Limits.CabinCelsius, ruleset.Heat.Cabin) + way * tolerances.Kelvin,
                UnderbodyCelsius = Air(build.Limits.UnderbodyCelsius, ruleset.Heat.Underbody) + way * tolerances.Kelvin,
            },
        },
    };

    private Amplifier Move(Amplifier amplifier, int index, double factor) =>
        present.Build.Draws[index].Efficiency is { } efficiency
        ? amplifier with { Efficiency = Math.Min(1, efficiency * factor) }
        : amplifier with { RatedInputAmps = amplifier.RatedInputAmps / factor };

    private static double Air(double? stated, Figure figure) => stated ?? figure.Value;

    private string Words((Tolerance What, int Way)[] corner) => string.Join(" and ", corner.Select(Word));

    private string Word((Tolerance What, int Way) part)
    {
        return part.What switch
        {
            Tolerance.Efficiency => $"efficiency {Phrase.Percent(tolerances.EfficiencyShare)} {Way("higher", "lower")}",
            Tolerance.ChargingVoltage => $"charging voltage {Phrase.Volts(tolerances.ChargingVolts)} {Way("higher", "lower")}",
            Tolerance.Length => $"lengths {Phrase.Percent(tolerances.LengthShare)} {Way("longer", "shorter")}",
            _ => $"surroundings {present.Build.Phrase.TemperatureDifference(tolerances.Kelvin)} {Way("hotter", "cooler")}",
        };

        string Way(string more, string less) => part.Way > 0 ? more : less;
    }

    private enum Tolerance
    {
        Efficiency,
        ChargingVoltage,
        Length,
        Surroundings,
    }
}
