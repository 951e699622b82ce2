using Cablewright.Engine.Builds;
using Cablewright.Engine.Changes;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Data;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Rulesets;

/// <summary>What is worked out follows the tables of the ruleset at hand, so that another ruleset may carry others.</summary>
public class TableTests
{
    private static readonly FuseFamilyRow[] FuseRows =
        Embedded.Read("Rulesets/2026.2/fuse-families.json", FusesJson.Default.FuseFamilyRowArray);

    [Fact]
    public void A_fuse_loses_what_the_ruleset_s_family_does()
    {
        FuseFamilyRow[] lossier =
            [.. FuseRows.Select(row => row with { DropAtRatingVolts = row.DropAtRatingVolts with { Value = 0.3 } })];
        double now = Ohms(RulesetLibrary.Newest), then = Ohms(SampleRulesets.With(fuseFamilies: new FuseFamilies(lossier)));
        double added = 0.3 - RulesetLibrary.Newest.FuseFamilies.Of(FuseFamilyName.Anl).DropAtRatingVolts.Value;
        Near.Relative(added / 150, then - now, 1e-6, "ohm");

        static double Ohms(Ruleset ruleset) =>
            Of(SampleBuilds.OneAmplifier(), ruleset).Sized.Evaluation.Design.FuseOhms(0);
    }

    [Fact]
    public void A_conductor_may_carry_what_the_ruleset_s_table_says()
    {
        AmpacityRow[] half = [.. RulesetLibrary.Newest.Ampacity.Rows.Select(row => row with { Amps = row.Amps / 2 })];
        Near.Relative(
            Amps(RulesetLibrary.Newest) / 2, Amps(SampleRulesets.With(ampacity: new AmpacityTable(half))), 1e-9, "A");

        static double Amps(Ruleset ruleset)
        {
            Variant variant = Of(SampleBuilds.OneAmplifier(), ruleset);
            return variant.Evaluator.Model.Ampacities.Of(0, variant.Sized.Evaluation.Design.Conductors[0].Conductor).LimitAmps;
        }
    }

    [Fact]
    public void A_conductor_withstands_what_the_ruleset_s_constants_say()
    {
        NamedFigure[] twice = [.. RulesetLibrary.Newest.ShortCircuit.Figures.Select(figure =>
            figure.Name.EndsWith("-heat", StringComparison.Ordinal) ? figure with { Value = 2 * figure.Value } : figure)];
        double now = Seconds(RulesetLibrary.Newest);
        Assert.InRange(Seconds(SampleRulesets.With(shortCircuit: new ShortCircuitConstants(twice))) / now, 1.5, 2.5);

        static double Seconds(Ruleset ruleset) =>
            Of(SampleBuilds.ConstantCurrent(50), ruleset).Sized.Faults.Clearings[0].WithstandSeconds;
    }

    [Fact]
    public void A_battery_rests_at_the_ruleset_s_voltage()
    {
        RestVoltageRow[] higher =
            [.. RulesetLibrary.Newest.RestVoltages.All.Select(row => row with { Volts = row.Volts + 0.25 })];
        Near.Relative(
            Volts(RulesetLibrary.Newest) + 0.25, Volts(SampleRulesets.With(restVoltages: new RestVoltages(higher))), 1e-9, "V");

        static double Volts(Ruleset ruleset) =>
            BuildCompletion.Complete(SampleBuilds.OneAmplifier(), ruleset, new WorkMeter(double.PositiveInfinity))
                .Batteries[0].RestVolts;
    }

    [Fact]
    public void A_fuse_family_that_is_missing_or_there_twice_is_refused()
    {
        Assert.Throws<InvalidDataException>(() => new FuseFamilies(FuseRows[1..]));
        Assert.Throws<InvalidDataException>(() => new FuseFamilies([.. FuseRows, FuseRows[0]]));
    }

    [Fact]
    public void Isolators_are_of_the_ruleset_s_ratings()
    {
        var ratings = new IsolatorRatings(new SourcedNumbers([35, 70], "a shop", "common practice, no source"));
        Variant variant = Of(PartedBuilds.Behind(PartedBuilds.Relay(30), 30), SampleRulesets.With(isolatorRatings: ratings));
        Violation small = Assert.Single(
            variant.Sized.Evaluation.Violations, violation => violation.Kind is ViolationKind.IsolatorOverRated);
        Edit edit = Assert.Single(PartChanges.Isolator(variant.Build, small).Edits);
        Assert.Equal(Held.Of(WrittenFigure.Of(35, WrittenUnit.Ampere)), edit.To);
        Assert.Equal(70, ratings.Next(70.000001));
        Assert.Null(ratings.Next(70.1));
        Assert.Throws<InvalidDataException>(
            () => new IsolatorRatings(new SourcedNumbers([70, 35], "a shop", "common practice, no source")));
    }

    [Fact]
    public void A_chemistry_without_rest_voltages_is_refused()
    {
        RestVoltageRow[] others =
            [.. RulesetLibrary.Newest.RestVoltages.All.Where(row => row.Chemistry != Chemistry.Gel.Word())];
        Assert.Throws<InvalidDataException>(() => new RestVoltages(others));
    }

    private static Variant Of(Build build, Ruleset ruleset) =>
        Variant.Of(build, ruleset, new WorkMeter(double.PositiveInfinity));
}
