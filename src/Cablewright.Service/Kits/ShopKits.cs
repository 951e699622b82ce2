using System.Runtime.CompilerServices;
using Cablewright.Contract.Kits;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>Kept kits in SI units, each converted once: reading the quantities of ten thousand takes longer than judging them.</summary>
internal static class ShopKits
{
    private static readonly ConditionalWeakTable<Kit, Engine.Kits.Kit> Converted = [];

    /// <summary>The kit as the engine sees it.</summary>
    public static Engine.Kits.Kit ToEngine(StoredKit kept) => Converted.GetValue(kept.Kit, KitMapping.ToEngine);
}
