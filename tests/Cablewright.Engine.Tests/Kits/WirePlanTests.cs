using Cablewright.Engine.Builds;
using Cablewright.Engine.Kits;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Materials;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Kits;

/// <summary>
/// What is cut from what, in lengths worked by hand: a run needs its length and a tenth (common practice, no source) in one
/// piece, so 5 m need 5.5 m, 4 m need 4.4 m and 1 m needs 1.1 m.
/// </summary>
public class WirePlanTests
{
    /// <summary>5.5 m are just enough for 5 m, so no thinner cable is taken.</summary>
    [Fact]
    public void A_piece_that_is_long_enough_serves()
    {
        WirePlan plan = Plan([Needs("main", 5)], Cable("4 AWG", 5.5), Cable("8 AWG", 6));
        Assert.Equal("4 AWG 5.5 m", Cut(plan, "main"));
        Assert.Empty(plan.Shortages);
    }

    /// <summary>5.2 m reach over 5 m, but not with the tenth.</summary>
    [Fact]
    public void A_piece_that_only_just_reaches_is_a_soft_shortage()
    {
        WireShortage shortage = Assert.Single(Plan([Needs("main", 5)], Cable("4 AWG", 5.2)).Shortages);
        Assert.Equal(("main", 5.2, false), (shortage.Piece.Run.Id, shortage.LeftMetres, shortage.IsHard));
    }

    /// <summary>6 m and a tenth are 6.6 m, which 64-bit floats make 6.6000000000000005 m.</summary>
    [Fact]
    public void A_cable_of_just_the_length_is_no_shortage() =>
        Assert.Empty(Plan([Needs("main", 6)], Cable("4 AWG", 6.6)).Shortages);

    /// <summary>5 m reach exactly over 5 m; 4.9 m do not.</summary>
    [Theory]
    [InlineData(5, false)]
    [InlineData(4.9, true)]
    public void A_piece_that_does_not_reach_is_a_hard_shortage(double metres, bool isHard) =>
        Assert.Equal(isHard, Assert.Single(Plan([Needs("main", 5)], Cable("4 AWG", metres)).Shortages).IsHard);

    /// <summary>Two pieces of 3 m make 6 m, but a cable is not joined: the longest that there is misses 2 m.</summary>
    [Fact]
    public void Pieces_are_not_joined()
    {
        WireShortage shortage = Assert.Single(Plan([Needs("main", 5)], Cable("4 AWG", 2.8), Cable("4 AWG", 3)).Shortages);
        Assert.Equal((3, true), (shortage.LeftMetres, shortage.IsHard));
    }

    /// <summary>Of 6.5 m 5.5 m are cut; what is left, 1.0 m, reaches over 1 m only without its tenth.</summary>
    [Fact]
    public void What_is_left_of_a_piece_serves_the_next_run()
    {
        WireShortage shortage = Assert.Single(Plan([Needs("main", 5, 100), Needs("feed", 1, 50)], Cable("4 AWG", 6.5)).Shortages);
        Assert.Equal(("feed", false), (shortage.Piece.Run.Id, shortage.IsHard));
        Near.Relative(1.0, shortage.LeftMetres, 1e-12, "left, m");
        Assert.Empty(Plan([Needs("main", 5, 100), Needs("feed", 1, 50)], Cable("4 AWG", 6.7)).Shortages);
    }

    /// <summary>Each of two pieces of 5.6 m serves one run of 5 m; one of them alone does not serve both.</summary>
    [Theory]
    [InlineData(2, 0)]
    [InlineData(1, 1)]
    public void A_part_held_twice_is_two_pieces(int count, int shortages) => Assert.Equal(
        shortages,
        Plan([Needs("main", 5, 100), Needs("feed", 5, 50)], Cable("4 AWG", 5.6) with { Count = count }).Shortages.Count);

    /// <summary>
    /// The better cable is 5.6 m, enough for one of two runs of 5 m: the one with the more current has it, wherever it stands.
    /// </summary>
    [Fact]
    public void The_run_with_the_most_current_has_the_best_cable()
    {
        WirePlan plan = Plan([Needs("little", 5, 10), Needs("much", 5, 100)], Cable("8 AWG", 6), Cable("4 AWG", 5.6));
        Assert.Equal(("8 AWG 6 m", "4 AWG 5.6 m"), (Cut(plan, "little"), Cut(plan, "much")));
        Assert.Empty(plan.Shortages);
    }

    /// <summary>6 m reach with the tenth. 5.2 m and 5 m reach without it, so that the better of these two is taken.</summary>
    [Fact]
    public void A_cable_that_is_long_enough_goes_before_a_better_one_that_only_just_reaches()
    {
        Assert.Equal("8 AWG 6 m", Cut(Plan([Needs("main", 5)], Cable("4 AWG", 5.2), Cable("8 AWG", 6)), "main"));
        Assert.Equal("2 AWG 5 m", Cut(Plan([Needs("main", 5)], Cable("4 AWG", 5.2), Cable("2 AWG", 5)), "main"));
    }

    /// <summary>4.9 m do not reach over 5 m, 5 m of thinner cable do.</summary>
    [Fact]
    public void A_cable_that_reaches_goes_before_a_better_one_that_does_not() =>
        Assert.Equal("8 AWG 5 m", Cut(Plan([Needs("main", 5)], Cable("4 AWG", 4.9), Cable("8 AWG", 5)), "main"));

    /// <summary>
    /// Two conductors of 4 m need two cuts of 4.4 m: 8.9 m do, 8.7 m leave 4.3 m, which reach without the tenth.
    /// </summary>
    [Theory]
    [InlineData(8.9, 0)]
    [InlineData(8.7, 1)]
    public void Parallel_conductors_are_cut_one_by_one(double metres, int shortages)
    {
        WirePlan plan = Plan([Needs("main", 4, count: 2)], Cable("4 AWG", metres));
        Assert.Equal(shortages, plan.Shortages.Count);
        Assert.All(plan.Shortages, shortage => Assert.False(shortage.IsHard));
    }

    /// <summary>After a hard shortage nothing is left, and no less than nothing: 2 m for 5 m, then for 4 m.</summary>
    [Fact]
    public void No_less_than_nothing_is_left()
    {
        WirePlan plan = Plan([Needs("main", 5, 100), Needs("feed", 4, 50)], Cable("4 AWG", 2));
        Assert.Equal(
            [("main", 2.0, true), ("feed", 0.0, true)],
            plan.Shortages.Select(each => (each.Piece.Run.Id, each.LeftMetres, each.IsHard)));
        Assert.Equal("4 AWG 2 m", Cut(plan, "feed"));
    }

    [Fact]
    public void Without_cable_nothing_is_planned()
    {
        WirePlan plan = Plan([Needs("main", 5)]);
        Assert.Empty(plan.ByRun);
        Assert.Empty(plan.Shortages);
    }

    /// <summary>The piece that a list of materials makes of a run, with a current.</summary>
    private static WirePiece Needs(string id, double metres, double amps = 100, int count = 1)
    {
        Run run = Run(id, "starter", "bass", metres, "4 AWG");
        WirePiece piece = DrawnRuns.NeedsOf(OneAmplifier() with
        {
            Runs = [run with { Conductor = run.Conductor with { Count = count } }, Run("return", "bass", "body", 1, "4 AWG")],
        }).Pieces[0];
        return piece with { Run = piece.Run with { PeakAmps = amps } };
    }

    private static KitPart Cable(string size, double metres) => SampleKits.Wire(KitPartKind.PowerWire, size, metres);

    private static WirePlan Plan(WirePiece[] pieces, params KitPart[] cables) => new(
        pieces, KitWire.In(new Kit(null, "kit", null, null, cables), KitPartKind.PowerWire, RulesetLibrary.Newest));

    private static string Cut(WirePlan plan, string run) =>
        $"{plan.ByRun[run].Part.Size!.Label} {plan.ByRun[run].Part.LengthMetres} m";
}
