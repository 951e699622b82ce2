using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Heat;

/// <summary>Ampacity beside the published table: other metals, hotter air, sizes between and beyond.</summary>
public class AmpacityTests
{
    private static readonly Gen<ConductorSize> AnySize = Gen.OneOfConst([.. ConductorSize.All]);
    private static readonly Gen<ConductorSize> AnyGauge = Gen.OneOfConst([.. ConductorSize.All.Where(size => !size.IsMetric)]);
    private static readonly Gen<ConductorSize> AnyMetric = Gen.OneOfConst([.. ConductorSize.All.Where(size => size.IsMetric)]);
    private static readonly Gen<(ConductorSize, ConductorSize)> TwoOfOneSystem = Gen.OneOf(
        Gen.Select(AnyGauge, AnyGauge), Gen.Select(AnyMetric, AnyMetric));

    /// <summary>
    /// The same size of another metal sheds the same heat, so its current goes by the root of the resistances: at 105 °C
    /// copper-clad resists 1.5497 · 1.34425/1.33405 = 1.5615 times copper, 160 A/√1.5615 = 128.04 A; tinned 1.07347 times, 154.43
    /// A; aluminium 1.6393 · 1.34255/1.33405 = 1.6498 times, 124.57 A.
    /// </summary>
    [Theory]
    [InlineData(Material.CopperCladAluminium, 128.04)]
    [InlineData(Material.TinnedCopper, 154.43)]
    [InlineData(Material.Aluminium, 124.57)]
    public void Another_metal_carries_less_by_the_root_of_its_resistance(Material material, double amps)
    {
        AmpacityFigures figures = Of("4 AWG", material, 105, 30);
        Near.Relative(amps, figures.LimitAmps, 1e-4, material.Word());
        Assert.Null(figures.TableAmps);
    }

    /// <summary>
    /// 4 AWG at 105 °C in 80 °C: the table reaches 50 °C with 160 · √(55/75) = 137.02 A; the heat balance of an independent
    /// program gives 145.57 A in 50 °C and 97.54 A in 80 °C, so the limit is 137.02 · 97.54/145.57 = 91.81 A.
    /// </summary>
    [Fact]
    public void Hotter_air_than_the_table_knows_scales_by_the_heat_balance() =>
        Near.Relative(91.81, Of("4 AWG", Material.Copper, 105, 80).LimitAmps, 2e-4, "4 AWG in 80 C, A");

    /// <summary>
    /// 22 AWG at 105 °C: the table ends at 18 AWG with 20 A, of which the heat balance of an independent program leaves 11.68 A.
    /// </summary>
    [Fact]
    public void A_smaller_size_than_the_table_knows_scales_by_the_heat_balance() =>
        Near.Relative(11.68, Of("22 AWG", Material.Copper, 105, 30).LimitAmps, 5e-4, "22 AWG, A");

    [Fact]
    public void A_bundle_takes_its_share_of_every_figure()
    {
        AmpacityFigures alone = Of("4 AWG", Material.Copper, 105, 40);
        AmpacityFigures bundled = Ampacity.Of(
            Conductor.Of(ConductorSize.Of("4 AWG"), Material.Copper), 105, 40, 0.7, RulesetLibrary.Newest);
        Near.Relative(0.7 * alone.LimitAmps, bundled.LimitAmps, 1e-12, "limit");
        Near.Relative(0.7 * alone.TableAmps!.Value, bundled.TableAmps!.Value, 1e-12, "table");
        Near.Relative(0.7 * alone.HeatBalanceAmps, bundled.HeatBalanceAmps, 1e-12, "heat balance");
    }

    [Fact]
    public void Surroundings_as_hot_as_the_insulation_may_be_leave_nothing()
    {
        Assert.Equal(0, Of("4 AWG", Material.Copper, 60, 60).LimitAmps);
        Assert.Equal(0, Of("1/0 AWG", Material.Aluminium, 80, 90).LimitAmps);
    }

    [Fact]
    public void Hotter_air_never_carries_more() =>
        Gen.Select(AnySize, Gen.Enum<Material>(), Gen.Double[60, 125], Gen.Double[-20, 125], Gen.Double[0, 40])
            .Sample((size, material, rating, air, more) =>
                Limit(size, material, rating, air + more) <= Limit(size, material, rating, air) * (1 + 1e-9), iter: 5000);

    /// <summary>
    /// Two columns of the table are equal in places (18 AWG at 90 and 105 °C), and below its sizes the share that the heat
    /// balance leaves falls by a few thousandths from one to the next: hence the half percent.
    /// </summary>
    [Fact]
    public void A_higher_insulation_rating_never_carries_less() =>
        Gen.Select(AnySize, Gen.Enum<Material>(), Gen.Double[60, 125], Gen.Double[-20, 100], Gen.Double[0, 1])
            .Sample((size, material, rating, air, share) =>
                Limit(size, material, rating + share * (125 - rating), air) >= Limit(size, material, rating, air) * (1 - 0.005),
                iter: 5000);

    /// <summary>
    /// Within one system of sizes: a tinned metric size has a published maximum of its own, below that of tinned gauges.
    /// </summary>
    [Fact]
    public void More_metal_never_carries_less() =>
        Gen.Select(TwoOfOneSystem, Gen.Enum<Material>(), Gen.OneOfConst(60.0, 75, 80, 90, 105, 125), Gen.Double[-20, 120])
            .Sample((sizes, material, rating, air) =>
            {
                (ConductorSize one, ConductorSize other) = sizes;
                (ConductorSize smaller, ConductorSize larger) = one.IsLargerThan(other) ? (other, one) : (one, other);
                return Limit(larger, material, rating, air) >= Limit(smaller, material, rating, air) * (1 - 1e-9);
            }, iter: 5000);

    [Fact]
    public void Better_conducting_metals_carry_more() =>
        Gen.Select(AnySize, Gen.Double[60, 125], Gen.Double[-20, 59]).Sample((size, rating, air) =>
        {
            double[] amps = [.. Enum.GetValues<Material>().Select(material => Limit(size, material, rating, air))];
            return amps.SequenceEqual(amps.OrderDescending());
        }, iter: 2000);

    private static double Limit(ConductorSize size, Material material, double insulationCelsius, double airCelsius) =>
        Ampacity.Of(Conductor.Of(size, material), insulationCelsius, airCelsius, 1, RulesetLibrary.Newest).LimitAmps;

    private static AmpacityFigures Of(string size, Material material, double insulationCelsius, double airCelsius) =>
        Ampacity.Of(Conductor.Of(ConductorSize.Of(size), material), insulationCelsius, airCelsius, 1, RulesetLibrary.Newest);
}
