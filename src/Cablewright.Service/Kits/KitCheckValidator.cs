using Cablewright.Contract.Kits;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Kits;

/// <summary>Checks that a kit check names one kit.</summary>
internal sealed class KitCheckValidator : ContractValidator<KitCheck>
{
    private const string Accepted = "kit, or shop and sku";

    public KitCheckValidator()
    {
        CheckNestedFirst();
        RuleFor(asked => asked).Custom(CheckKit);
    }

    private static void CheckKit(KitCheck asked, ValidationContext<KitCheck> context)
    {
        bool isKept = asked.Shop is not null && asked.Sku is not null;
        if (asked.Kit is null && !isKept)
            context.AddFault(null, KitCodes.Missing, "which kit is not said", Accepted);
        else if (asked.Kit is not null && (asked.Shop is not null || asked.Sku is not null))
            context.AddFault(
                nameof(KitCheck.Kit), KitCodes.Twice, "a kit is given, and a shop's number for one", Accepted);
    }
}
