using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Materials;

/// <summary>
/// The prices of a list of materials, multiplied by hand. A tenth more than the measured length is bought (common practice, no
/// source); the runs are 6 m, 0.6 m and 0.4 m.
/// </summary>
public class MaterialPriceTests
{
    private const double Cent = 0.01;

    /// <summary>6.6 m at 4.10 are 27.06; (0.6 m + 0.4 m) and a tenth at 4.10 are 4.51; together 31.57.</summary>
    [Fact]
    public void A_line_costs_its_length_to_buy_times_the_price_of_a_metre()
    {
        Assessment answer = Priced(Proved(), "EUR", Copper("4 AWG", 4.10));
        Assert.Equal([27.06, 4.51], Wires(answer).Select(line => line.Price!.Value), Within(Cent / 100));
        Assert.All(Wires(answer), line => Assert.Equal("EUR", line.Currency));
        Assert.Equal(31.57, answer.MaterialCost!.Price, Cent / 100);
        Assert.Equal("EUR", answer.MaterialCost.Currency);
    }

    /// <summary>Two conductors side by side in the main run: 13.2 m at 4.10 are 54.12.</summary>
    [Fact]
    public void Parallel_conductors_are_each_paid_for()
    {
        Build twice = Proved().WithRun("main", run => run with { Conductor = run.Conductor with { Count = 2 } });
        Assert.Equal(54.12, Wires(Priced(twice, "EUR", Copper("4 AWG", 4.10)))[0].Price!.Value, Cent / 100);
    }

    /// <summary>The fuse, the terminals and a metal that nobody put a price on are counted, not guessed.</summary>
    [Fact]
    public void What_has_no_stated_price_has_none_and_is_counted()
    {
        Build mixed = Proved().WithRun(
            "return", run => run with { Conductor = run.Conductor with { Material = Material.TinnedCopper } });
        Assessment answer = Priced(mixed, null, Copper("4 AWG", 4.10));
        Assert.Null(Wires(answer).Single(line => line.Material is Material.TinnedCopper).Price);
        Assert.Equal(27.06 + 1.1 * 0.4 * 4.10, answer.MaterialCost!.Price, Cent / 100);
        Assert.Equal(answer.Materials.Count - 2, answer.MaterialCost.UnpricedLines);
        Assert.Null(answer.MaterialCost.Currency);
    }

    /// <summary>
    /// A fuse with its holder at 12.50, the terminals of 4 AWG on the studs at 1.20 each: what is then unpriced is what has no
    /// price of its kind, grommets and loom.
    /// </summary>
    [Fact]
    public void Fuses_and_terminals_are_priced_too()
    {
        Build build = Proved();
        Assessment answer = Assessor.Assess(
            build with
            {
                Sizing = build.Sizing with
                {
                    FusePrices = [new FusePrice(FuseFamilyName.BladeE, 12.5)],
                    TerminalPrices = [new TerminalPrice(ConductorSize.Of("4 AWG"), 1.2)],
                    Currency = "EUR",
                },
            },
            RulesetLibrary.Newest);
        MaterialLine fuse = answer.Materials.Single(line => line.ItemName == "fuse with holder");
        MaterialLine terminals = answer.Materials.Single(line => line.ItemName == "ring terminal");
        Assert.Equal((12.5, "EUR"), (fuse.Price!.Value, fuse.Currency));
        Assert.Equal(1.2 * terminals.Count, terminals.Price!.Value, Cent / 100);
        Assert.Equal(12.5 + 1.2 * terminals.Count, answer.MaterialCost!.Price, Cent / 100);
        Assert.Equal(answer.Materials.Count - 2, answer.MaterialCost.UnpricedLines);
    }

    /// <summary>One block that parts a feed into two, at 19.00.</summary>
    [Fact]
    public void A_distribution_block_is_priced()
    {
        Build build = Proved();
        Run main = build.Runs.Single(run => run.Id == "main");
        build = build with
        {
            Amplifiers = [.. build.Amplifiers, build.Amplifiers[0] with { Id = "front" }],
            Runs =
            [
                .. build.Runs.Where(run => run.Id != "main"), main with { To = "block" },
                Run("bass-feed", "block", build.Amplifiers[0].Id, 1, "4 AWG"), Run("front-feed", "block", "front", 1, "4 AWG"),
                Run("front-return", "front", "body", 1, "4 AWG"),
            ],
            Sizing = build.Sizing with { BlockPrice = 19 },
        };
        MaterialLine block = Assessor.Assess(build, RulesetLibrary.Newest).Materials
            .Single(line => line.ItemName == "distribution block");
        Assert.Equal((1, 19.0), (block.Count, block.Price!.Value));
    }

    [Fact]
    public void Without_prices_nothing_costs_anything_known()
    {
        Assessment answer = Priced(Proved(), "EUR");
        Assert.Null(answer.MaterialCost);
        Assert.All(answer.Materials, line => Assert.Null(line.Price));
    }

    private static Assessment Priced(Build build, string? currency, params ConductorPrice[] prices) => Assessor.Assess(
        build with { Sizing = build.Sizing with { Prices = prices, Currency = currency } }, RulesetLibrary.Newest);

    private static ConductorPrice Copper(string size, double perMetre) =>
        new(ConductorSize.Of(size), Material.Copper, perMetre);

    private static MaterialLine[] Wires(Assessment answer) =>
        [.. answer.Materials.Where(line => line.CutLengthMetres is not null)];

    private static Func<double, double, bool> Within(double tolerance) =>
        (one, other) => Math.Abs(one - other) <= tolerance;
}
