using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Kits.SampleKits;

namespace Cablewright.Engine.Tests.Kits;

/// <summary>
/// The kits that shops sell, against amplifiers of which the page knows the power and the way alone, 5 m: 8 AWG with 40 A, 4 AWG
/// with 80 A, 1/0 AWG with 150 A. An 8 AWG kit is sold for 300 W, a 4 AWG one for 500 to 750 W, a 1/0 AWG one for 1000 to 1500 W,
/// in copper-clad aluminium for less (common practice, no source).
/// </summary>
public class KitMatrixTests
{
    [Theory]
    [InlineData("8 AWG", 40, Material.Copper, 300, KitVerdict.Serves)]
    [InlineData("4 AWG", 80, Material.Copper, 300, KitVerdict.Serves)]
    [InlineData("4 AWG", 80, Material.Copper, 500, KitVerdict.Serves)]
    [InlineData("4 AWG", 80, Material.Copper, 750, KitVerdict.Serves)]
    [InlineData("1/0 AWG", 150, Material.Copper, 500, KitVerdict.Serves)]
    [InlineData("1/0 AWG", 150, Material.Copper, 1000, KitVerdict.Serves)]
    [InlineData("1/0 AWG", 150, Material.Copper, 1500, KitVerdict.Serves)]
    [InlineData("4 AWG", 80, Material.CopperCladAluminium, 300, KitVerdict.Serves)]
    [InlineData("4 AWG", 80, Material.CopperCladAluminium, 500, KitVerdict.Serves)]
    [InlineData("1/0 AWG", 150, Material.CopperCladAluminium, 1000, KitVerdict.Serves)]
    [InlineData("8 AWG", 40, Material.Copper, 1000, KitVerdict.DoesNotServe)]
    [InlineData("8 AWG", 40, Material.Copper, 1500, KitVerdict.DoesNotServe)]
    [InlineData("8 AWG", 40, Material.CopperCladAluminium, 1000, KitVerdict.DoesNotServe)]
    [InlineData("4 AWG", 80, Material.CopperCladAluminium, 1500, KitVerdict.DoesNotServe)]
    [InlineData("4 AWG", 80, Material.Copper, 1500, KitVerdict.ServesWithChange)]
    public void An_ordinary_kit_serves_what_it_is_sold_for(
        string size, double fuse, Material material, double watts, KitVerdict verdict)
    {
        Engine.Kits.Kit kit = Sized(size)
            .With(KitPartKind.PowerWire, wire => wire with { Material = material })
            .With(KitPartKind.GroundWire, wire => wire with { Material = material, LengthMetres = 0.9144 })
            .With(KitPartKind.Fuse, part => part with { RatingAmps = fuse });
        Contract.Kits.KitAnswer answer = kit.Check(Bare(watts));
        Assert.Equal((watts, verdict), (watts, answer.Verdict));
        Assert.DoesNotContain("kit.cut-tight", answer.Codes());
    }
}
