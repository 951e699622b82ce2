using Cablewright.Engine.Builds;
using Cablewright.Reports;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Builds;

/// <summary>Which runs are supply and which are return, told from the places alone or from what is marked.</summary>
public class SideResolutionTests
{
    [Theory]
    [InlineData("starter", "bass", Side.Supply)]
    [InlineData("alternator", "starter", Side.Supply)]
    [InlineData("starter", "rear", Side.Supply)]
    [InlineData("bass", "starter", Side.Return)]
    [InlineData("bass", "body", Side.Return)]
    [InlineData("body", "starter", Side.Return)]
    [InlineData("starter", "body", Side.Return)]
    [InlineData("body", "bass", Side.Return)]
    public void Its_own_places_tell(string from, string to, Side side) => Assert.Equal([side], Sides(From(from, to)));

    /// <summary>Over two junctions; each run alone would tell nothing or only of its own end.</summary>
    [Fact]
    public void Runs_that_meet_at_a_junction_are_one_piece()
    {
        Assert.Equal(
            [Side.Supply, Side.Supply, Side.Supply], Sides(From("p", "q"), From("starter", "p"), From("q", "bass")));
        Assert.Equal(
            [Side.Return, Side.Return, Side.Return], Sides(From("p", "q"), From("bass", "p"), From("q", "starter")));
    }

    /// <summary>A battery and an amplifier have two terminals, so that what meets there need not be of one side.</summary>
    [Fact]
    public void Runs_that_meet_at_a_battery_or_an_amplifier_are_not() => Assert.Equal(
        [Side.Supply, Side.Return, Side.Return], Sides(From("starter", "bass"), From("bass", "body"), From("body", "starter")));

    [Fact]
    public void A_junction_tied_to_the_body_makes_all_its_runs_returns() => Assert.Equal(
        [Side.Return, Side.Return], Sides(From("bass", "post"), From("post", "body")));

    /// <summary>The places alone would say the other side each time.</summary>
    [Theory]
    [InlineData("starter", "bass", Side.Return)]
    [InlineData("bass", "starter", Side.Supply)]
    public void What_is_marked_wins_over_the_places(string from, string to, Side marked)
    {
        Assert.Equal([marked], Sides(From(from, to) with { Side = marked }));
        Assert.Equal([marked, marked], Sides(From(from, "p"), From("p", to) with { Side = marked }));
    }

    [Fact]
    public void A_run_to_a_battery_alone_tells_nothing() =>
        Unclear(0, From("p", "starter"), From("p", "rear"));

    [Fact]
    public void A_run_from_one_amplifier_to_another_tells_two_things() => Unclear(0, From("bass", "treble"));

    [Fact]
    public void A_piece_that_comes_from_a_battery_and_from_an_amplifier_tells_two_things() =>
        Unclear(1, From("starter", "bass"), From("starter", "p"), From("bass", "p"));

    /// <summary>Where none is listed a battery called "battery" is assumed; where one is, that name is a junction's.</summary>
    [Fact]
    public void The_battery_that_is_assumed_tells_too()
    {
        Build none = Of(From("battery", "p"), From("p", "rear-block")) with { Vehicle = new Vehicle() };
        Assert.Equal([Side.Supply, Side.Supply], Resolve(none, []));
        Unclear(0, From("battery", "p"), From("p", "rear"));
    }

    /// <summary>The pointer leads to the run that is marked supply, though it is not the first of the piece.</summary>
    [Theory]
    [InlineData("body", null)]
    [InlineData("post", Side.Return)]
    public void Supply_that_meets_a_return_is_a_contradiction(string to, Side? marked)
    {
        List<BuildFault> faults = [];
        Side[] sides = Resolve(
            Of(
                From("starter", "rear"), From("bass", "p"), From("p", to) with { Side = marked },
                From("p", "q") with { Side = Side.Supply }, From("starter", "treble") with { Side = Side.Supply }),
            faults);
        BuildFault fault = Assert.Single(faults);
        Assert.Equal(("/runs/3/side", "run.side-contradicts"), (Pointers.Of(fault.At), fault.Code));
        Assert.Equal(Side.Supply, sides[1]);
    }

    private static void Unclear(int first, params Run[] runs)
    {
        List<BuildFault> faults = [];
        Side[] sides = Resolve(Of(runs), faults);
        BuildFault fault = Assert.Single(faults);
        Assert.Equal(($"/runs/{first}", "run.side-unclear"), (Pointers.Of(fault.At), fault.Code));
        Assert.Equal(Side.Supply, sides[first]);
    }

    private static Side[] Sides(params Run[] runs)
    {
        List<BuildFault> faults = [];
        Side[] sides = Resolve(Of(runs), faults);
        Assert.Empty(faults);
        return sides;
    }

    private static Side[] Resolve(Build build, List<BuildFault> faults) =>
        SideResolution.Resolve(build, new PlaceNames(build), faults);

    private static Run From(string from, string to) => new() { Id = $"{from}-{to}", From = from, To = to, LengthMetres = 1 };

    private static Build Of(params Run[] runs) => new()
    {
        Vehicle = new Vehicle
        {
            Alternator = new Alternator { At = "alternator" },
            Batteries = [new Battery { Id = "starter" }, new Battery { Id = "rear" }],
        },
        Amplifiers = [new Amplifier { Id = "bass" }, new Amplifier { Id = "treble" }],
        Runs = runs,
    };
}
