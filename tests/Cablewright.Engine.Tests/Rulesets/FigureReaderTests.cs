using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Tests.Rulesets;

/// <summary>A ruleset whose figures are not those that its members hold is refused when it is read, all faults at once.</summary>
public class FigureReaderTests
{
    private static readonly IReadOnlyList<Figure> Complete = RulesetLibrary.Newest.Figures;

    [Fact]
    public void The_published_figures_are_those_that_the_members_hold()
    {
        Ruleset again = SampleRulesets.With(Complete);
        Assert.Equal(Complete, again.Figures);
        Assert.Equal(0.03, again.Drop.Target.Value);
    }

    [Fact]
    public void A_missing_figure_is_a_fault() =>
        Refused(Complete.Where(figure => figure.Id != "drop.target"), "drop.target is missing");

    [Fact]
    public void An_unknown_figure_is_a_fault() =>
        Refused(Complete.Append(Complete[0] with { Id = "drop.wish" }), "drop.wish is unknown");

    [Fact]
    public void A_figure_that_stands_there_twice_is_a_fault() =>
        Refused(Complete.Append(Complete[0] with { Value = 0.9 }), $"{Complete[0].Id} stands there twice");

    [Fact]
    public void Another_unit_is_a_fault() => Refused(
        Complete.Select(figure => figure.Id == "fuse.max-distance" ? figure with { Unit = "in" } : figure),
        "fuse.max-distance is in \"in\" and not in \"m\"");

    [Fact]
    public void All_faults_are_listed_at_once() => Refused(
        Complete.Where(figure => figure.Id is not ("drop.limit" or "heat.cabin")).Append(Complete[0] with { Id = "heat.boot" }),
        "drop.limit is missing; heat.cabin is missing; heat.boot is unknown");

    [Fact]
    public void Two_members_do_not_hold_the_same_figure()
    {
        var reader = new FigureReader([Complete[0]]);
        reader.Take(Complete[0].Id, Complete[0].Unit);
        reader.Take(Complete[0].Id, Complete[0].Unit);
        Assert.EndsWith(
            $": {Complete[0].Id} is asked for by two members.",
            Assert.Throws<InvalidDataException>(() => reader.ThrowIfFaulty("1")).Message, StringComparison.Ordinal);
    }

    private static void Refused(IEnumerable<Figure> figures, string faults) => Assert.Equal(
        $"The figures of ruleset {RulesetLibrary.Newest.Id}: {faults}.",
        Assert.Throws<InvalidDataException>(() => SampleRulesets.With([.. figures])).Message);
}
