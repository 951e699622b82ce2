using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Builds;

/// <summary>
/// What is reached over the runs of one side: <c>a - b - c</c> and <c>d - e</c> are supply, <c>c - d</c> is a return.
/// </summary>
public class ReachTests
{
    private static readonly Side[] Sides = [Side.Supply, Side.Supply, Side.Return, Side.Supply];

    private static readonly Build Drawn = new() { Runs = [From("a", "b"), From("c", "b"), From("c", "d"), From("d", "e")] };

    [Theory]
    [InlineData("a")]
    [InlineData("b")]
    [InlineData("c")]
    public void All_that_hangs_together_is_reached_from_any_part_of_it(string start)
    {
        Reach reach = Marked(Side.Supply, start);
        Assert.All(["a", "b", "c"], place => Assert.True(reach.Contains(place), place));
    }

    [Fact]
    public void A_run_of_the_other_side_leads_nowhere()
    {
        Reach reach = Marked(Side.Supply, "c");
        Assert.All(["d", "e"], place => Assert.False(reach.Contains(place), place));
        Assert.True(Marked(Side.Return, "c").Contains("d"));
        Assert.False(Marked(Side.Return, "c").Contains("b"));
    }

    [Fact]
    public void Several_starts_add_up()
    {
        Reach reach = Marked(Side.Supply, "a", "e");
        Assert.All(["a", "b", "c", "d", "e"], place => Assert.True(reach.Contains(place), place));
    }

    [Fact]
    public void What_nothing_was_marked_for_is_not_reached() => Assert.False(Marked(Side.Supply).Contains("a"));

    /// <summary>A battery without a run is reached, since it is one, and nothing with it.</summary>
    [Fact]
    public void A_place_without_a_run_is_reached_alone()
    {
        Reach reach = Marked(Side.Supply, "lonely");
        Assert.True(reach.Contains("lonely"));
        Assert.All(["a", "d", "other"], place => Assert.False(reach.Contains(place), place));
    }

    [Fact]
    public void Only_the_ends_of_its_own_side_s_runs_are_touched()
    {
        Reach supply = Marked(Side.Supply), back = Marked(Side.Return);
        Assert.All(["a", "b", "c", "d", "e"], place => Assert.True(supply.Touches(place), place));
        Assert.All(["c", "d"], place => Assert.True(back.Touches(place), place));
        Assert.All(["a", "b", "e"], place => Assert.False(back.Touches(place), place));
        Assert.False(supply.Touches("lonely"));
    }

    /// <summary>Names are told apart by their case.</summary>
    [Fact]
    public void Another_case_is_another_place() => Assert.False(Marked(Side.Supply, "A").Contains("a"));

    private static Reach Marked(Side side, params string[] starts)
    {
        var reach = new Reach(Drawn, Sides, side);
        foreach (string start in starts) reach.Mark(start);
        return reach;
    }

    private static Run From(string from, string to) => new() { Id = $"{from}-{to}", From = from, To = to, LengthMetres = 1 };
}
