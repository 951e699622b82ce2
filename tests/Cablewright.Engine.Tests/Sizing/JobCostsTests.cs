using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// What a run costs, added up by hand: 5 m of 4 AWG at 2.00, terminals at 1.50, a small bolt-in fuse at 12.00 and an ANL at 15.00
/// with their holders. The amplifier draws 60 A: a fuse of 75 A and more, a small one; two of 120 A together an ANL.
/// </summary>
public class JobCostsTests
{
    private static readonly ConductorChoice One = new(Conductor.Of(ConductorSize.Of("4 AWG"), Material.Copper), 1);

    /// <summary>5 · 2.00 + 2 · 1.50 + 12.00.</summary>
    [Fact]
    public void A_run_from_a_battery_has_its_conductor_two_terminals_and_a_fuse() =>
        Near.Relative(25, Costs(Feed(60)).Of(0, One), 1e-9, "main");

    /// <summary>Each of two has its own: 2 · (5 · 2.00 + 2 · 1.50 + 12.00).</summary>
    [Fact]
    public void Each_conductor_in_parallel_has_terminals_and_a_fuse_of_its_own() =>
        Near.Relative(50, Costs(Feed(60)).Of(0, One with { Count = 2 }), 1e-9, "two conductors");

    /// <summary>One for both, of 120 A / 0.8 = 150 A: 2 · (5 · 2.00 + 2 · 1.50) + 15.00.</summary>
    [Fact]
    public void One_fuse_for_both_is_paid_once()
    {
        Build build = Feed(120).WithRun("main", run => run with { Fuse = new FuseWish { PerConductor = false } });
        Near.Relative(41, Costs(build).Of(0, One with { Count = 2 }), 1e-9, "one fuse");
    }

    /// <summary>What is given, refused or not certain costs nothing: 5 · 2.00 + 2 · 1.50; and a return has no fuse.</summary>
    [Fact]
    public void A_fuse_counts_where_one_that_is_open_is_certain_to_stand()
    {
        Near.Relative(13, Costs(Feed(60).WithRun("main", run => run with { Fuse = Anl(100) })).Of(0, One), 1e-9, "given");
        Near.Relative(13, Costs(Feed(60).WithRun("main", run => run with { Fuse = NoFuse })).Of(0, One), 1e-9, "refused");
        Build behind = Feed(60) with
        {
            Runs = [Run("first", "starter", "block", 1, "1/0 AWG"), .. Feed(60).Runs.Skip(1), Open("main", "block")],
        };
        Near.Relative(13, Costs(behind).Of(2, One), 1e-9, "at a block");
        Build stated = behind.WithRun("main", run => run with { Fuse = new FuseWish() });
        Near.Relative(25, Costs(stated).Of(2, One), 1e-9, "stated at a block");
        Near.Relative(2 + 3, Costs(Feed(60)).Of(1, One), 1e-9, "return");
    }

    /// <summary>
    /// Without prices, in kilograms of copper: 4 AWG has 21.15 mm² (ASTM B258) of 8.89 g/cm³ and 2 % of lay (ASTM B172, from
    /// memory), 0.1918 kg/m. 5 m, two terminals of 0.01 and 0.15 m each, and 0.3 for the fuse (common practice, no source).
    /// </summary>
    [Fact]
    public void Without_prices_the_relative_ones_count() => Near.Relative(
        5 * 0.1918 + 2 * (0.01 + 0.15 * 0.1918) + 0.3,
        Costs(Feed(60) with { Sizing = new SizingWishes() }).Of(0, One), 1e-3, "relative");

    /// <summary>
    /// Where conductors alone have prices, twice what they relatively cost, the rest counts twice too: 2.00 over 0.1918 is 10.43.
    /// </summary>
    [Fact]
    public void What_has_no_price_counts_at_what_the_others_are_on_average()
    {
        Build build = Feed(60);
        build = build with { Sizing = build.Sizing with { FusePrices = [], TerminalPrices = [] } };
        Near.Relative(10 + 10.43 * (2 * (0.01 + 0.15 * 0.1918) + 0.3), Costs(build).Of(0, One), 1e-3, "scaled");
    }

    [Fact]
    public void The_cost_of_a_choice_is_that_of_its_runs()
    {
        var task = new SizingTask(Evaluated(Feed(60)));
        SizedBuild sized = Sizer.Size(Evaluated(Feed(60)));
        Near.Relative(task.Costs.Of(0, sized.Evaluation.Design.Conductors[0]), sized.Cost, 1e-9, "cost");
    }

    private static JobCosts Costs(Build build) => new SizingTask(Evaluated(build)).Costs;

    private static Evaluator Evaluated(Build build) =>
        new(BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)));

    private static Build Feed(double amps) => ConstantCurrent(amps) with
    {
        Runs = [Open("main", "starter"), Run("return", "bass", "starter", 1, "4 AWG")],
        Sizing = new SizingWishes
        {
            Prices = [new ConductorPrice(ConductorSize.Of("4 AWG"), Material.Copper, 2)],
            FusePrices = [new FusePrice(FuseFamilyName.MiniAnl, 12), new FusePrice(FuseFamilyName.Anl, 15)],
            TerminalPrices = [new TerminalPrice(ConductorSize.Of("4 AWG"), 1.5)],
        },
    };

    private static Run Open(string id, string from)
    {
        Run run = Run(id, from, "bass", 5, "4 AWG");
        return run with { Conductor = run.Conductor with { Size = null } };
    }
}
