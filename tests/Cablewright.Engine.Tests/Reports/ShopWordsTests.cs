using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>An answer is said as a customer can buy by it, and its remedies as a shop would give them.</summary>
public class ShopWordsTests
{
    [Fact]
    public void The_summary_names_the_cable_the_ground_and_the_fuse()
    {
        Build open = OneAmplifier().WithRun("main", run => run with { Conductor = new(), Fuse = null })
            .WithRun("return", run => run with { Conductor = new() });
        Assessment answer = Assessed.Of(open);
        RunResult main = answer.Runs[0];
        Assert.StartsWith(
            $"Use 16 ft of {main.Conductor.Size} copper, and the same for the ground. "
            + $"FIT A FUSE of {main.Fuse!.RatingAmps} A (ANL) within 18 in of the battery.",
            answer.Summary, StringComparison.Ordinal);
    }

    /// <summary>2500 W at 80 % are 217 A at 14.4 V; fuses of 60 A stand for 60 x 14.4 x 0.8 = 691.2 W.</summary>
    [Fact]
    public void The_summary_begins_with_what_an_amplifier_is_whose_own_fuses_belie_its_label()
    {
        Build build = OneAmplifier().WithAmplifier(
            amplifier => amplifier with { RatedOutputWatts = 2500, OnBoardFuseAmps = 60 });
        Assert.StartsWith(
            "Amplifier \"bass\" has fuses of 60 A: it is one of about 691 W, not of 2500 W. ", Assessed.Of(build).Summary,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_alike_in_two_places_is_one_finding()
    {
        Build build = OneAmplifier().WithRun("main", Clad).WithRun("return", Clad).WithRun("strap", Clad);
        Finding clad = Assert.Single(Assessed.Of(build).Findings, finding => finding.Code == "run.copper-clad");
        Assert.Equal("/runs/0/conductor", clad.Pointer);
        Assert.Equal(["/runs/1/conductor", "/runs/2/conductor"], clad.AlsoAt!);
        Assert.EndsWith("So it is with run \"return\", run \"strap\".", clad.Message, StringComparison.Ordinal);
    }

    private static Run Clad(Run run) =>
        run with { Conductor = run.Conductor with { Material = Material.CopperCladAluminium } };

    /// <summary>A thin ground is cured by the cable of its supply, and not by less power.</summary>
    [Fact]
    public void The_first_change_is_the_one_that_a_shop_would_try()
    {
        Build thin = OneAmplifier().WithRun("return", run => run.Sized("10 AWG"));
        Change[] changes = [.. Assessed.WithAdvice(thin).Feasibility!.Changes];
        Assert.Equal(ChangeKind.Conductor, changes[0].Kind);
        Assert.Equal("1/0 AWG", Assert.Single(changes[0].Edits).To);
        Assert.Equal(Verdict.Pass, changes[0].Verdict);
        Assert.All(changes[..^1], change => Assert.NotEqual(ChangeKind.Power, change.Kind));
    }

    /// <summary>A larger feed brings its ground along, so that the cure does not lead into the next fault.</summary>
    [Fact]
    public void A_larger_supply_changes_with_its_ground()
    {
        Build build = OneAmplifier().WithRun("main", run => run.Sized("8 AWG")).WithRun("return", run => run.Sized("8 AWG"));
        Change change = Assessed.WithAdvice(build).Feasibility!.Changes
            .First(each => each.Kind is ChangeKind.Conductor or ChangeKind.Combination);
        Assert.Contains("main", change.Runs);
        Assert.Contains("return", change.Runs);
    }

    /// <summary>Behind 700 A of cold cranking an ANL is asked for 3000 A; parts of 6000 A are sold.</summary>
    [Fact]
    public void A_fuse_that_has_to_be_bought_is_named_with_what_it_has_to_interrupt()
    {
        Build build = OneAmplifier().WithRun("main", run => run with { Fuse = null });
        build = build with
        {
            Vehicle = build.Vehicle with { Batteries = [Starter() with { InternalOhms = null, ColdCrankingAmps = 700 }] },
        };
        Finding found = Assert.Single(
            Assessed.Of(build).Findings, finding => finding.Code == "fuse.interrupting-rating-unknown");
        Assert.Equal(Severity.Info, found.Severity);
        Assert.Contains("3000 A", found.Remedy, StringComparison.Ordinal);
    }

    /// <summary>
    /// 31.59 A through the relay, as <c>SupplyPairs</c> works it out: shops have relays of 30 A and of 40 A, common practice, no
    /// source.
    /// </summary>
    [Fact]
    public void An_isolator_is_named_by_a_rating_that_is_sold()
    {
        Build small = PartedBuilds.Behind(PartedBuilds.Relay(30), 30);
        Finding over = Assert.Single(Assessed.Of(small).Findings, finding => finding.Code == "isolator.over-rating");
        Assert.Equal("one rated for 40 A or more, or less power behind it", over.Remedy);
        Finding unknown = Assert.Single(
            Assessed.Of(PartedBuilds.Behind(PartedBuilds.Relay(null), 30)).Findings,
            finding => finding.Code == "isolator.rating-unknown");
        Assert.Equal("state its rating; it needs 40 A or more", unknown.Remedy);
    }

    /// <summary>Above the largest that is sold, the current itself is named.</summary>
    [Fact]
    public void A_current_beyond_all_usual_isolators_is_named_as_it_is()
    {
        Build large = PartedBuilds.Behind(PartedBuilds.Relay(30), 550);
        Finding over = Assert.Single(Assessed.Of(large).Findings, finding => finding.Code == "isolator.over-rating");
        Assert.True(over.Measured > 500);
        Assert.StartsWith($"one rated for {over.Measured:0} A or more", over.Remedy, StringComparison.Ordinal);
    }

    /// <summary>The band of an ANL is from memory; whether it opens before 6 AWG is hurt hangs on it.</summary>
    [Fact]
    public void The_opening_times_of_a_fuse_are_asked_for_where_they_would_change_the_verdict()
    {
        Build build = OneAmplifier().WithRun("main", run => run.Sized("6 AWG"));
        Assert.Contains(
            Assessed.WithAdvice(build).AskNext, asked => asked.Pointer == "/runs/0/fuse/openingTimes");
    }
}
