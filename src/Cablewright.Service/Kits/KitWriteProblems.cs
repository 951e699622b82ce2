using Cablewright.Service.Problems;
using Cablewright.Storage;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>Why a kit was not written.</summary>
internal static class KitWriteProblems
{
    /// <summary>The problem that an outcome is; <c>null</c> where the kit was written.</summary>
    public static ProblemAnswer? Of(KitWrite outcome, string shop, string sku, StorageSettings settings) => outcome switch
    {
        KitWrite.Missing => KitAddress.Nothing(shop, sku),
        KitWrite.ConditionFailed => new(ProblemKinds.ConditionFailed),
        KitWrite.ConditionMissing => new(ProblemKinds.ConditionMissing),
        KitWrite.TooMany => Full($"at most {settings.KitsPerShop} kits"),
        KitWrite.TooLarge => Full($"kits of at most {settings.KitBytesPerShop} bytes together"),
        _ => null,
    };

    private static ProblemAnswer Full(string quota) => new(
        ProblemKinds.CatalogueFull, $"A shop may have {quota}. {ProblemKinds.CatalogueFull.Meaning}", []);
}
