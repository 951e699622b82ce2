using System.Xml.Linq;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Charts;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Fuzz;
using Cablewright.Service.Tests.Support;
using Cablewright.Vocabulary;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>The charts: their figures, and that every build gets some that can be read.</summary>
public class ChartTests(ServiceFixture service, ITestOutputHelper output) : IClassFixture<ServiceFixture>
{
    private const int Generated = 200;

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task An_example_has_charts_that_say_what_they_show(string name)
    {
        (Build build, Assessment answer) = (await service.To(ExampleFiles.Request(name)))!.Value;
        IReadOnlyList<string> charts = ChartSet.Of(build, answer);
        Assert.NotEmpty(charts);
        foreach ((int i, string chart) in charts.Index()) await Pictures.Keep($"example-{name}.chart{i}.svg", chart);
        Assert.All(charts, chart => Assert.Empty(Troubles(XElement.Parse(chart))));
    }

    [Fact]
    public async Task Random_builds_have_charts_without_nonsense()
    {
        output.WriteLine($"{FuzzRun.SeedVariable}={FuzzRun.Seed}");
        await Parallel.ForEachAsync(FuzzRun.Cases(Generated), async (number, _) =>
        {
            string body = RandomBuild.Of(new Dice(FuzzRun.Seed, number)).ToJsonString();
            if (await service.To(body) is not var (build, answer)) return;
            foreach (string chart in ChartSet.Of(build, answer))
                Assert.False(Troubles(XElement.Parse(chart)).Any(), FuzzRun.Again(number) + chart);
        });
    }

    /// <summary>
    /// IEC 60364-5-54, table A.54.2: k = 143 A√s/mm² for copper from 30 °C to 160 °C, the limit of thermoplastic insulation up to
    /// 300 mm²; 1/0 AWG, 53.48 mm² (ASTM B258), then withstands 6000 A for (143 · 53.48 / 6000)² = 1.62 s.
    /// </summary>
    [Fact]
    public async Task The_line_of_what_a_conductor_withstands_is_the_published_one()
    {
        Assessment answer = (await service.To(Builds.Small))!.Value.Answer;
        RunResult run = answer.Runs[0];
        run = run with
        {
            TemperatureCelsius = 30,
            Conductor = run.Conductor with { Size = "1/0 AWG", Material = Material.Copper, Count = 1, InsulationCelsius = 70 },
        };
        (double amps, double seconds) = Assert.Single(FuseChart.Withstand(run, [6000], RulesetLibrary.Newest));
        Assert.Equal(6000, amps);
        Assert.InRange(seconds, 1.62 * 0.98, 1.62 * 1.02);
    }

    /// <summary>Two in parallel share the current: each withstands it four times as long as one does.</summary>
    [Fact]
    public async Task Conductors_in_parallel_share_the_current()
    {
        RunResult run = (await service.To(Builds.Small))!.Value.Answer.Runs[0];
        double one = FuseChart.Withstand(run, [2000], RulesetLibrary.Newest).Single().Seconds;
        RunResult pair = run with { Conductor = run.Conductor with { Count = 2 } };
        Assert.Equal(one, FuseChart.Withstand(pair, [4000], RulesetLibrary.Newest).Single().Seconds, one * 1e-9);
    }

    /// <summary>
    /// Copper Wire Tables (NBS Circular 31): 1/0 AWG has 0.3224 mΩ/m at 20 °C solid, a strand some per cent more; 10 m of it at
    /// 100 A lose 32.2 W.
    /// </summary>
    [Fact]
    public async Task What_is_lost_is_the_square_of_the_current_times_the_resistance()
    {
        RunResult run = (await service.To(Builds.Small))!.Value.Answer.Runs[0] with
        {
            TemperatureCelsius = 20,
            PeakCurrentAmps = 100,
            LengthMetres = 10,
        };
        Assert.InRange(LossChart.Watts(run, ConductorSize.Of("1/0 AWG"), Material.Copper), 32.2, 32.2 * 1.06);
    }

    [Theory]
    [InlineData(0, 22, "0 5 10 15 20")]
    [InlineData(13.05, 13.8, "13.2 13.4 13.6 13.8")]
    public void An_axis_has_round_figures(double least, double most, string ticks) => Assert.Equal(
        ticks, string.Join(' ', new Scale(least, most, 0, 100, false).Ticks().Select(tick => Math.Round(tick, 6))));

    private static IEnumerable<string> Troubles(XElement svg)
    {
        foreach (XAttribute attribute in svg.DescendantsAndSelf().Attributes())
        {
            if (attribute.Value.Contains("NaN", StringComparison.Ordinal) || attribute.Value.Contains('∞'))
                yield return attribute.ToString();
        }

        if ((string?)svg.Attribute("role") != "img") yield return "no picture for those who hear it";
        if (svg.Elements().Count(child => child.Name.LocalName is "title" or "desc" && child.Value.Length > 0) != 2)
            yield return "no words";
    }
}
