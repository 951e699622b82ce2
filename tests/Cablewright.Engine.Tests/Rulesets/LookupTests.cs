using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Rulesets;

/// <summary>What a figure is looked up by stands at the end of its id.</summary>
public class LookupTests
{
    private static Ruleset Newest => RulesetLibrary.Newest;

    [Fact]
    public void Each_chemistry_has_its_own_figures() => Assert.All(Enum.GetValues<Chemistry>(), chemistry =>
    {
        Assert.Equal("supply.peukert-" + chemistry.Word(), Newest.Supply.Peukert(chemistry).Id);
        Assert.Equal("supply.half-charged-" + chemistry.Word(), Newest.Supply.HalfCharged(chemistry).Id);
        string family = chemistry is Chemistry.LiFePo4 ? "lifepo4" : "lead-acid";
        Assert.Equal("supply.usable-" + family, Newest.Supply.Usable(chemistry).Id);
        Assert.Equal($"supply.{family}-charging-rate", Newest.Supply.ChargingRate(chemistry).Id);
        Assert.Equal($"supply.{family}-resistance-capacity", Newest.Supply.ResistanceCapacity(chemistry).Id);
    });

    [Fact]
    public void Each_class_of_amplifier_has_its_own_figures() => Assert.All(Enum.GetValues<AmplifierClass>(), kind =>
    {
        Assert.Equal("load.efficiency-" + TradeWords.Word(kind).ToLowerInvariant(), Newest.Load.Efficiency(kind).Id);
        Assert.Equal(
            "load.form-factor-" + (kind is AmplifierClass.D ? "switching" : "linear"), Newest.Load.FormFactor(kind).Id);
    });

    [Fact]
    public void Each_programme_has_its_crest_factor() => Assert.All(
        Enum.GetValues<Programme>(),
        programme => Assert.Equal("load.crest-factor-" + programme.Word(), Newest.Load.CrestFactor(programme).Id));

    [Fact]
    public void Each_metal_has_its_relative_price() => Assert.All(
        Enum.GetValues<Material>(),
        material => Assert.Equal("sizing.relative-price-" + material.Word(), Newest.Sizing.RelativePrice(material).Id));

    [Theory]
    [InlineData(124, "heat.short-circuit-limit")]
    [InlineData(125, "heat.short-circuit-limit-125")]
    public void Insulation_of_125_degrees_bears_more_in_a_short_circuit(double insulationCelsius, string id) =>
        Assert.Equal(id, Newest.Heat.ShortCircuitLimitOf(insulationCelsius).Id);
}
