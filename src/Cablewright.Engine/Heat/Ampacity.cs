using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Heat;

/// <summary>What a conductor may carry continuously.</summary>
/// <param name="LimitAmps">The figure that is judged against.</param>
/// <param name="TableAmps">The published table with its corrections, <c>null</c> where it does not reach.</param>
/// <param name="HeatBalanceAmps">The heat balance alone.</param>
public readonly record struct AmpacityFigures(double LimitAmps, double? TableAmps, double HeatBalanceAmps);

/// <summary>Ampacity from the published table with its corrections, and from the heat balance.</summary>
/// <remarks>
/// <para>For copper of a size and in surroundings that the table reaches, the table is the limit:
/// I = I₃₀ √((T − Ta)/(T − 30)), which reproduces the engine-space factors of the table's note 1 within 0.01. Surroundings
/// below 30 °C earn nothing.</para>
/// <para>Elsewhere (another metal, a size beyond the table, hotter air) the heat balance is scaled to the table at its nearest
/// point: I = I_table(nearest) · I_balance(here) / I_balance(nearest). A tinned conductor is copper of its own resistance.</para>
/// </remarks>
public static class Ampacity
{
    /// <summary>The ampacity of one conductor.</summary>
    /// <param name="conductor">Size and metal.</param>
    /// <param name="insulationCelsius">Insulation rating, 60 to 125 °C.</param>
    /// <param name="airCelsius">Surroundings, °C.</param>
    /// <param name="bundling">Share that is left in a bundle; 1 alone.</param>
    /// <param name="ruleset">The table, and how far it reaches.</param>
    public static AmpacityFigures Of(
        Conductor conductor, double insulationCelsius, double airCelsius, double bundling, Ruleset ruleset)
    {
        AmpacityTable published = ruleset.Ampacity;
        double here = HeatBalance.Of(conductor).CurrentAt(insulationCelsius, airCelsius);
        int column = published.ColumnFor(insulationCelsius);
        if (airCelsius >= column) return new AmpacityFigures(0, null, here * bundling);
        double tableAir = ruleset.Heat.TableSurroundings.Value;
        double nearestAir = Math.Clamp(airCelsius, tableAir, ruleset.Heat.TableReach.Value);
        double nearestArea = Math.Clamp(conductor.Size.MetalAreaMm2, published.SmallestAreaMm2, published.LargestAreaMm2);
        double table = published.Amps(nearestArea, column) * Math.Sqrt((column - nearestAir) / (column - tableAir));
        bool sizeReached = nearestArea == conductor.Size.MetalAreaMm2;
        bool airReached = airCelsius <= nearestAir;
        if (conductor.Material is Material.Copper && sizeReached && airReached)
            return new AmpacityFigures(table * bundling, table * bundling, here * bundling);

        ConductorSize size = sizeReached
            ? conductor.Size
            : published.Sizes.MinBy(each => Math.Abs(each.MetalAreaMm2 - nearestArea))!;
        var nearest = Conductor.Of(size, Material.Copper);
        double there = HeatBalance.Of(nearest).CurrentAt(column, nearestAir);
        double hereInColumn = HeatBalance.Of(conductor).CurrentAt(column, Math.Max(airCelsius, nearestAir));
        return new AmpacityFigures(table * hereInColumn / there * bundling, null, here * bundling);
    }
}
