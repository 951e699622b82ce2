using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Sizing;

/// <summary>An amplifier's ground is the same cable as its supply: what makers ask for and shops sell.</summary>
internal static class GroundRule
{
    /// <summary>
    /// For each run the supply whose conductor it has, or -1: an open return of which nothing else is stated, at an amplifier
    /// that has one supply run and one return.
    /// </summary>
    public static int[] SuppliesOf(BuildModel model)
    {
        var supplyOf = new int[model.Build.Runs.Count];
        Array.Fill(supplyOf, -1);
        if (model.Build.Stated.Sizing.GroundSize is GroundSize.Free) return supplyOf;
        for (int amplifier = 0; amplifier < model.Build.Draws.Count; amplifier++)
        {
            ILookup<Side, int> runs = model.Circuit.RunsAt(amplifier).ToLookup(run => model.Build.Runs[run].Side);
            if (runs[Side.Supply].ToArray() is not [var supply] || runs[Side.Return].ToArray() is not [var ground]) continue;
            if (MayBeSame(model.Build.Runs[supply].Wish, model.Build.Runs[ground])) supplyOf[ground] = supply;
        }

        return supplyOf;
    }

    private static bool MayBeSame(ConductorWish supply, CompleteRun ground) => ground is { Given: null, Wish: var wish }
        && (wish.Material is null || wish.Material == supply.Material)
        && (wish.Count is null || wish.Count == (supply.Count ?? 1));

    /// <summary>Whether every ground is the same cable as its supply.</summary>
    public static bool IsKeptBy(ConductorChoice[] conductors, int[] supplyOf)
    {
        for (int run = 0; run < supplyOf.Length; run++)
        {
            if (supplyOf[run] >= 0 && conductors[run] != conductors[supplyOf[run]]) return false;
        }

        return true;
    }

    /// <summary>Makes every ground the same cable as its supply.</summary>
    public static void Keep(ConductorChoice[] conductors, int[] supplyOf)
    {
        for (int run = 0; run < supplyOf.Length; run++)
        {
            if (supplyOf[run] >= 0) conductors[run] = conductors[supplyOf[run]];
        }
    }
}
