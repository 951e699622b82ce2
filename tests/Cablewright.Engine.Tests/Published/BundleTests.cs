using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Protection.Drawn;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: ABYC E-11 (2008) as extracted in public studies: tables VI-A (single) and VI-B (bundled), and 11.14.3.7.1, by which a
/// bundle counts beyond 24 in of common run.
/// </summary>
public class BundleTests
{
    /// <summary>Single and bundled, 105 °C insulation.</summary>
    [Theory]
    [InlineData("12 AWG", 45, 31.5)]
    [InlineData("10 AWG", 60, 42)]
    [InlineData("8 AWG", 80, 56)]
    [InlineData("6 AWG", 120, 84)]
    public void Bundled_conductors_carry_what_the_table_says(string size, double single, double bundled)
    {
        Build build = Of(Fused("main", "starter", "bass", 30, size) with { Route = Route.Loom });
        double loom = ModelOf(build).Build.Runs[0].Bundling;
        Near.Relative(bundled / single, loom, 1e-9, "share of the ampacity");
    }

    /// <summary>24 in are 0.6096 m; a stated length counts on any route, and never more of it than the run has.</summary>
    [Theory]
    [InlineData(Route.Loom, 1.0, null, 0.7)]
    [InlineData(Route.Loom, 0.6, null, 1)]
    [InlineData(Route.Loom, 5.0, 0.6, 1)]
    [InlineData(Route.Loom, 5.0, 0.62, 0.7)]
    [InlineData(Route.Loom, 0.5, 5.0, 1)]
    [InlineData(Route.Cabin, 5.0, null, 1)]
    [InlineData(Route.Cabin, 5.0, 0.62, 0.7)]
    public void A_bundle_counts_beyond_24_inches(Route route, double metres, double? bundledMetres, double share)
    {
        Run main = Fused("main", "starter", "bass") with { Route = route, LengthMetres = metres, BundledMetres = bundledMetres };
        Assert.Equal(share, ModelOf(Of(main)).Build.Runs[0].Bundling);
    }
}
