using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>
/// A build with the favourable value wherever nothing is stated of insulation, route or class: what a kit fails without and not
/// with it, it fails by an assumption alone.
/// </summary>
/// <param name="Build">The build.</param>
/// <param name="Unstated">What is not stated of it.</param>
internal sealed record Favourable(Build Build, IReadOnlyList<Member> Unstated)
{
    /// <summary>The favourable build, or <c>null</c> where all is stated.</summary>
    public static Favourable? Of(Build build, Ruleset ruleset)
    {
        Amplifier[] amplifiers = [.. build.Amplifiers.Select(amplifier => LacksClass(amplifier, ruleset)
            ? amplifier with { Class = AmplifierClass.D }
            : amplifier)];
        Run[] runs = [.. build.Runs.Select(run => run with
        {
            Route = run.Route ?? Route.Cabin,
            Conductor = run.Conductor with
            {
                InsulationCelsius = run.Conductor.InsulationCelsius ?? ruleset.Kit.GoodInsulation.Value,
            },
        })];
        Member[] unstated =
        [
            .. build.Runs.Any(run => run.Conductor.InsulationCelsius is null) ? [Member.InsulationRating] : (Member[])[],
            .. build.Runs.Any(run => run.Route is null) ? [Member.Route] : (Member[])[],
            .. build.Amplifiers.Any(amplifier => LacksClass(amplifier, ruleset)) ? [Member.AmplifierClass] : (Member[])[],
        ];
        return unstated.Length == 0 ? null : new Favourable(build with { Amplifiers = amplifiers, Runs = runs }, unstated);
    }

    /// <summary>A larger one is taken to be of class D anyway.</summary>
    private static bool LacksClass(Amplifier amplifier, Ruleset ruleset) =>
        amplifier is { Class: null, Efficiency: null, RatedInputAmps: null, RatedOutputWatts: { } watts }
        && watts < ruleset.Load.ClassDFrom.Value;
}
