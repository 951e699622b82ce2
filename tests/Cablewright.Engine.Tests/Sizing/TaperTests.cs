using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// What leaves a block is never larger than what leads to it, although a short branch is the cheaper place for thick cable
/// (common practice, no source).
/// </summary>
public class TaperTests
{
    private const double Foot = 0.3048;

    [Fact]
    public void No_branch_is_larger_than_its_feed() => Parallel.For(0, 200, i =>
    {
        Build build = new ShopBuilds(200_000 + i).Any();
        Assessment answer = Assessed.Of(build);
        foreach (Run branch in build.Runs.Where(run => run.From is "block" or "second"))
        {
            Run feed = build.Runs.Single(run => run.To == branch.From);
            Assert.True(
                Siemens(answer, branch) <= Siemens(answer, feed) * 1.0001, $"build {i}: {branch.Id} is larger than {feed.Id}");
        }
    });

    /// <summary>10 ft to the block and a foot behind it: without the rule, 2 AWG there and 1/0 behind.</summary>
    [Fact]
    public void A_short_branch_is_not_where_the_copper_goes()
    {
        Assessment answer = Assessed.Of(Grounded(1200, branchFeet: 1));
        Assert.True(Siemens(answer.Runs[1]) <= Siemens(answer.Runs[0]) * 1.0001);
        Assert.True(Siemens(answer.Runs[2]) <= Siemens(answer.Runs[3]) * 1.0001, "the ground leads to a block too");
    }

    /// <summary>A battery feeds as well as it is fed: what leaves it is no branch of the cable that charges it.</summary>
    [Fact]
    public void What_leaves_a_battery_may_be_larger_than_what_charges_it()
    {
        Build build = new RandomBuilds(50_003).TwoBatteries();
        build = build with
        {
            Amplifiers = [build.Amplifiers[0] with { RatedOutputWatts = 900, Programme = Programme.Compressed }],
            Runs =
            [
                build.Runs[0] with { Conductor = new ConductorWish { Size = ConductorSize.Of("10 AWG") } },
                .. build.Runs.Skip(1),
            ],
        };
        Assessment answer = Assessed.Of(build);
        Assert.True(Siemens(answer.Runs[1]) > Siemens(answer.Runs[0]));
    }

    private static Build Grounded(double watts, double branchFeet) => new()
    {
        Vehicle = new Vehicle { Batteries = [new Battery { Id = "battery" }] },
        Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = watts }],
        Runs =
        [
            new Run { Id = "main", From = "battery", To = "block", LengthMetres = 10 * Foot },
            new Run { Id = "power", From = "block", To = "bass", LengthMetres = branchFeet * Foot },
            new Run { Id = "ground", From = "bass", To = "ground-block", LengthMetres = branchFeet * Foot },
            new Run { Id = "back", From = "ground-block", To = "battery", LengthMetres = 10 * Foot, Side = Side.Return },
        ],
    };

    private static double Siemens(Assessment answer, Run run) => Siemens(answer.Runs.Single(each => each.Id == run.Id));

    private static double Siemens(RunResult run) =>
        run.Conductor.Count / Conductor.Of(ConductorSize.Of(run.Conductor.Size), run.Conductor.Material).OhmsPerMetreAt20;
}
