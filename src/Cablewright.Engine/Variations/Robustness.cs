using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
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
    public static RobustnessFound Of(Variant present, Build frozen, WorkMeter meter) =>
        new Robustness(present, frozen, meter).Find();

    private RobustnessFound Find()
    {
        Verdict now = present.Verdict;
        Verdict worst = Corners(Enum.GetValues<Tolerance>()).Max(corner => Assess(corner).Verdict);
        if (worst <= now) return new RobustnessFound(now, [], null);
        foreach (Tolerance[] few in Subsets().OrderBy(subset => subset.Length))
        {
            foreach (Deviation[] corner in Corners(few))
            {
                Variant variant = Assess(corner);
                if (variant.Verdict == worst)
                    return new RobustnessFound(worst, corner, variant.Worst!.Value.Kind);
            }
        }

        throw new InvalidOperationException("The corner that is worst has become better.");
    }

    private static IEnumerable<Tolerance[]> Subsets()
    {
        Tolerance[] all = Enum.GetValues<Tolerance>();
        return Enumerable.Range(1, (1 << all.Length) - 1).Select(set => all.Where((_, i) => (set >> i & 1) == 1).ToArray());
    }

    private static IEnumerable<Deviation[]> Corners(Tolerance[] of)
    {
        IEnumerable<Deviation[]> corners = [[]];
        foreach (Tolerance what in of)
            corners = corners.SelectMany(corner => Directions.Select(way => (Deviation[])[.. corner, new Deviation(what, way)]));
        return corners;
    }

    private Variant Assess(Deviation[] corner)
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
}

/// <summary>What can be a little off.</summary>
internal enum Tolerance
{
    Efficiency,
    ChargingVoltage,
    Length,
    Surroundings,
}

/// <summary>Something that is off by its tolerance.</summary>
/// <param name="What">What is.</param>
/// <param name="Way">1: upward; -1: downward.</param>
internal readonly record struct Deviation(Tolerance What, int Way);

/// <summary>What becomes of the verdict when what was stated or assumed is a little off.</summary>
/// <param name="Worst">The worst verdict over all corners of the tolerances.</param>
/// <param name="TippedBy">The smallest set of deviations that leads there; empty where the verdict stays.</param>
/// <param name="TipsInto">The rule that then does not hold.</param>
internal sealed record RobustnessFound(Verdict Worst, IReadOnlyList<Deviation> TippedBy, ViolationKind? TipsInto);
