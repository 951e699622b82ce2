using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Conductors;

public class ConductorSizeTests
{
    [Fact]
    public void Sizes_are_listed_the_least_metal_first()
    {
        double[] areas = [.. ConductorSize.All.Select(size => size.MetalAreaMm2)];
        Assert.Equal(areas.Order(), areas);
        Assert.Equal(26, ConductorSize.All.Count(size => !size.IsMetric));
        Assert.Equal(26, ConductorSize.All.Count(size => size.IsMetric));
    }

    [Fact]
    public void More_metal_resists_less_and_weighs_more_in_every_material()
    {
        foreach (Material material in Enum.GetValues<Material>())
        {
            Conductor[] gauges =
                [.. ConductorSize.All.Where(size => !size.IsMetric).Select(size => Conductor.Of(size, material))];
            Conductor[] metric = [.. ConductorSize.All.Where(size => size.IsMetric).Select(size => Conductor.Of(size, material))];
            AssertLadder(gauges);
            AssertLadder(metric);
        }
    }

    [Fact]
    public void Metals_stand_in_the_order_of_their_conductance()
    {
        foreach (ConductorSize size in ConductorSize.All)
        {
            double[] ohms = [.. Enum.GetValues<Material>().Select(material => Conductor.Of(size, material).OhmsPerMetreAt20)];
            Assert.Equal(ohms.Order(), ohms);
        }
    }

    /// <summary>Three gauge numbers halve the area, within the rounding of the rule: 92^(6/39) = 2.005.</summary>
    [Theory]
    [InlineData("4 AWG", "1 AWG")]
    [InlineData("10 AWG", "7 AWG")]
    [InlineData("1 AWG", "3/0 AWG")]
    public void Three_gauge_numbers_double_the_area(string smaller, string larger)
    {
        double ratio = ConductorSize.Of(larger).MetalAreaMm2 / ConductorSize.Of(smaller).MetalAreaMm2;
        Assert.Equal(Math.Pow(92, 6 / 39.0), ratio, 12);
        Assert.True(ConductorSize.Of(larger).IsLargerThan(ConductorSize.Of(smaller)));
    }

    private static void AssertLadder(Conductor[] smallestFirst)
    {
        foreach ((Conductor smaller, Conductor larger) in smallestFirst.Zip(smallestFirst.Skip(1)))
        {
            Assert.True(larger.OhmsPerMetreAt20 < smaller.OhmsPerMetreAt20);
            Assert.True(larger.KilogramsPerMetre > smaller.KilogramsPerMetre);
            Assert.True(larger.DiameterMetres > smaller.DiameterMetres);
        }
    }
}
