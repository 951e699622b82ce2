using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Conductors;

namespace Cablewright.Engine.Sizing;

/// <summary>The conductors that an open run may be made of.</summary>
internal static class CandidateList
{
    private const int MostInParallel = 4;

    private static readonly ConductorSize[] UsualAmerican =
        [.. new[] { "18", "16", "14", "12", "10", "8", "6", "4", "2", "1/0", "2/0", "3/0", "4/0" }
            .Select(size => ConductorSize.Of(size + " AWG"))];

    private static readonly ConductorSize[] UsualMetric =
        [.. new[] { "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120" }
            .Select(size => ConductorSize.Of(size + " mm2"))];

    /// <summary>The sizes the trade keeps, where a build names none.</summary>
    public static IReadOnlyList<ConductorSize> Usual(UnitSystem units) => units is UnitSystem.Us ? UsualAmerican : UsualMetric;

    /// <summary>The candidates for one run, the one with the highest resistance first.</summary>
    /// <param name="run">The run.</param>
    /// <param name="build">The build, with its own lists.</param>
    /// <remarks>
    /// Several in parallel are offered only beyond the largest single conductor, unless the build states a count.
    /// </remarks>
    public static IReadOnlyList<ConductorChoice> For(CompleteRun run, Build build)
    {
        ConductorWish wish = run.Wish;
        ConductorSize? largest = run.Terminals.Select(terminal => terminal.Largest).MinBy(size => size.NominalAreaMm2);
        IReadOnlyList<ConductorSize> sizes = build.Sizing.Sizes.Count > 0 ? build.Sizing.Sizes : Usual(build.Units);
        IReadOnlyList<Material> materials = wish.Material is { } stated ? [stated]
            : build.Sizing.Materials.Count > 0 ? build.Sizing.Materials : [Material.Copper];
        int count = wish.Count ?? 1;
        List<ConductorChoice> choices = [.. Fitting(sizes, largest)
            .SelectMany(size => materials.Distinct().Select(material => new ConductorChoice(Conductor.Of(size, material), count)))
            .OrderByDescending(choice => choice.OhmsPerMetreAt20)
            .ThenBy(choice => choice.Conductor.Material)];
        if (wish.Count is null)
        {
            Conductor strongest = choices[^1].Conductor;
            for (int parallel = 2; parallel <= MostInParallel; parallel++) choices.Add(new ConductorChoice(strongest, parallel));
        }

        return choices;
    }

    /// <summary>
    /// What the terminals accept; where that is none of the sizes, the smallest of them, which a finding then names.
    /// </summary>
    private static ConductorSize[] Fitting(IReadOnlyList<ConductorSize> sizes, ConductorSize? largest)
    {
        ConductorSize[] fitting = [.. sizes.Distinct().Where(size => largest is null || size.FitsWhere(largest))];
        return fitting.Length > 0 ? fitting : [sizes.MinBy(size => size.MetalAreaMm2)!];
    }
}
