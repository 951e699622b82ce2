using Cablewright.Contract.Assessments;
using Cablewright.Contract.Kits;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Build = Cablewright.Engine.Builds.Build;
using Kit = Cablewright.Engine.Kits.Kit;

namespace Cablewright.Reports.Kits;

/// <summary>One kit of many, and what it is to the build.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Answer">What was found.</param>
public sealed record MatchedKit(Kit Kit, KitAnswer Answer);

/// <summary>Many kits held against one build.</summary>
/// <param name="Found">
/// Those that serve first, then those that serve with a change, then the others; within each kits priced in the build's currency,
/// then those in others, then those without a price; the cheapest first, then by name and number.
/// </param>
/// <param name="Untried">Kits left out, the last in that order of price, because the work would have been too much.</param>
/// <param name="Needs">What the job needs, chosen without regard to any kit.</param>
public sealed record MatchedKits(IReadOnlyList<MatchedKit> Found, int Untried, IReadOnlyList<MaterialLine> Needs);

/// <summary>Finds which of many kits serve a build.</summary>
public static class KitMatcher
{
    /// <summary>
    /// Runs assessed, over all trials, before the dearest kits stay untried: what ten thousand kits of all different cables and
    /// fuses take on a build of ten runs.
    /// </summary>
    private const double TrialBudget = 200_000;

    /// <summary>Holds every kit against the build.</summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="kits">The kits.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <param name="meter">Counts the work, and ends it.</param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    /// <exception cref="OperationCanceledException">The meter ended it.</exception>
    public static MatchedKits Match(Build build, IEnumerable<Kit> kits, Ruleset ruleset, WorkMeter meter) =>
        Match(build, kits, ruleset, meter, TrialBudget);

    /// <summary>The same, with another budget of runs assessed.</summary>
    internal static MatchedKits Match(Build build, IEnumerable<Kit> kits, Ruleset ruleset, WorkMeter meter, double trialBudget)
    {
        ArgumentNullException.ThrowIfNull(meter);
        var checker = new KitChecker(build, ruleset, meter, isBrief: true);
        double mostTrials = trialBudget / checker.Runs;
        List<MatchedKit> found = [];
        int untried = 0;
        foreach (Kit kit in Cheapest(kits, build.Sizing.Currency))
        {
            meter.Count(1);
            if (checker.TrialsMade < mostTrials && !meter.IsUsedUp) found.Add(new MatchedKit(kit, checker.Check(kit)));
            else untried++;
        }

        return new MatchedKits([.. found.OrderBy(match => match.Answer.Verdict)], untried, checker.Needs);
    }

    /// <summary>Prices in two currencies cannot be compared, so each currency has its own place.</summary>
    private static IOrderedEnumerable<Kit> Cheapest(IEnumerable<Kit> kits, string? currency) => kits
        .OrderBy(kit => kit.Price is null)
        .ThenBy(kit => currency is not null && kit.Currency != currency)
        .ThenBy(kit => kit.Currency, StringComparer.Ordinal)
        .ThenBy(kit => kit.Price)
        .ThenBy(kit => kit.Name, StringComparer.Ordinal)
        .ThenBy(kit => kit.Sku, StringComparer.Ordinal);
}
