using Cablewright.Contract.Kits;
using Cablewright.Service.Json;
using Cablewright.Service.Kits;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>Checks that a kit check names one kit, and that kit.</summary>
internal static class KitCheckValidator
{
    private const string Accepted = "kit, or shop and sku";

    private static readonly ContractValidator<KitCheck> Members = new();

    /// <summary>Everything wrong with what a check says of its kit.</summary>
    /// <param name="asked">The check.</param>
    /// <param name="isKept">Whether the shop keeps a kit of that number.</param>
    public static IEnumerable<Fault> FaultsOf(KitCheck asked, bool isKept)
    {
        foreach (Fault fault in Members.FaultsOf(asked)) yield return fault;
        if (asked.Kit is { } kit)
        {
            foreach (Fault fault in KitValidator.FaultsOf(kit)) yield return fault.Below("/kit");
            if (asked.Shop is not null || asked.Sku is not null)
                yield return new Fault("/kit", KitCodes.Twice, "a kit is given, and a shop's number for one", null, Accepted);
        }
        else if (asked.Shop is null || asked.Sku is null)
        {
            yield return new Fault("", KitCodes.Missing, "which kit is not said", null, Accepted);
        }
        else if (!isKept)
        {
            yield return new Fault(
                "/sku", KitCodes.SkuUnknown, "the shop keeps no kit of that number", Excerpt.Of(asked.Sku),
                $"a number that GET /v1/shops/{asked.Shop}/kits lists");
        }
    }
}
