using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Tests.Sizing;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Variations;

public class AlternativesTests
{
    [Fact]
    public void The_neighbours_in_size_metal_and_count_are_there()
    {
        IReadOnlyList<Alternative> main = Of(ConstantCurrent(60))[0];
        Assert.Equal(
            ["1 x 8 AWG copper", "1 x 4 AWG copper", "1 x 6 AWG tinned-copper", "1 x 6 AWG copper-clad-aluminium",
                "1 x 6 AWG aluminium", "2 x 6 AWG copper"],
            main.Select(other => other.Conductor).Select(other => $"{other.Count} x {other.Size} {other.Material.Word()}"));
    }

    /// <summary>Each is what the full assessment says of the build with that conductor in that run.</summary>
    [Fact]
    public void Each_is_the_assessment_of_the_build_with_it()
    {
        Build build = OneAmplifier();
        IReadOnlyList<IReadOnlyList<Alternative>> alternatives = Of(build);
        for (int run = 0; run < build.Runs.Count; run++)
        {
            foreach (Alternative other in alternatives[run])
            {
                Assessment whole = Assessed.Of(build.WithRun(build.Runs[run].Id, stated => stated with
                {
                    Conductor = stated.Conductor with
                    {
                        Size = ConductorSize.Of(other.Conductor.Size),
                        Material = other.Conductor.Material,
                        Count = other.Conductor.Count,
                    },
                }));
                Near.Relative(whole.Runs[run].DropVolts, other.DropVolts, 1e-9, "drop");
                Near.Relative(whole.Runs[run].Conductor.MassGrams, other.MassGrams, 1e-9, "mass");
                Assert.Equal(whole.Verdict, other.Verdict);
            }
        }
    }

    [Fact]
    public void Where_nothing_is_open_there_is_no_trade_off() =>
        Assert.Null(Assessed.Of(OneAmplifier() with { Include = [Extra.Alternatives] }).Sizing);

    /// <summary>Dearer always means less drop, and each point is a build that stands and drops what it says.</summary>
    [Fact]
    public void The_trade_off_falls_from_point_to_point()
    {
        Build open = OpenBuilds.Star(amplifiers: 3) with { Include = [Extra.Alternatives] };
        IReadOnlyList<TradeOffPoint> frontier = Assessed.Of(open).Sizing!.Frontier!;
        Assert.InRange(frontier.Count, 2, 12);
        Assert.All(frontier.Zip(frontier.Skip(1)), pair =>
        {
            Assert.True(pair.Second.Cost > pair.First.Cost);
            Assert.True(pair.Second.WorstDropPercent < pair.First.WorstDropPercent);
        });
        foreach (TradeOffPoint point in frontier)
        {
            Assessment whole = Assessed.Of(open with
            {
                Include = [],
                Runs = [.. open.Runs.Select(run => With(run, point.Choices.FirstOrDefault(choice => choice.Run == run.Id)))],
            });
            Assert.NotEqual(Verdict.Fail, whole.Verdict);
            Near.Relative(
                whole.Amplifiers.Max(amplifier => amplifier.ConductorDropPercent), point.WorstDropPercent, 1e-6, "worst drop");
        }
    }

    private static Run With(Run run, TradeOffChoice? choice) => choice is null ? run : run with
    {
        Conductor = run.Conductor with { Size = ConductorSize.Of(choice.Size), Material = choice.Material, Count = choice.Count },
    };

    private static IReadOnlyList<IReadOnlyList<Alternative>> Of(Build build) =>
        [.. Assessed.Of(build with { Include = [Extra.Alternatives] }).Runs.Select(run => run.Alternatives!)];
}
