using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Kits;

/// <summary>One kit of many, and what it is to the build.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Check">What was found.</param>
public sealed record KitMatch(Kit Kit, KitCheck Check);

/// <summary>Finds which of many kits serve a build.</summary>
public static class KitMatcher
{
    /// <summary>
    /// Every kit: those that serve first, then those that serve with a change, then the others; within each the cheapest first, kits
    /// without a price last, then by name.
    /// </summary>
    /// <param name="build">A build without faults.</param>
    /// <param name="kits">The kits, all priced in one currency where they are priced.</param>
    /// <param name="ruleset">The limits to apply.</param>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    public static IReadOnlyList<KitMatch> Match(Build build, IEnumerable<Kit> kits, Ruleset ruleset)
    {
        var checker = new KitChecker(build, ruleset, isBrief: true);
        return [.. kits.Select(kit => new KitMatch(kit, checker.Check(kit)))
            .OrderBy(match => match.Check.Verdict)
            .ThenBy(match => match.Kit.Price ?? double.PositiveInfinity)
            .ThenBy(match => match.Kit.Name, StringComparer.Ordinal)
            .ThenBy(match => match.Kit.Sku, StringComparer.Ordinal)];
    }
}
