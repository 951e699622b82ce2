using Cablewright.Contract.Kits;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Kits;

/// <summary>Checks a kit.</summary>
internal sealed class KitValidator : ContractValidator<Kit>
{
    public KitValidator()
    {
        CheckNestedFirst();
        RuleFor(kit => kit).Custom(CheckCurrency);
    }

    private static void CheckCurrency(Kit kit, ValidationContext<Kit> context)
    {
        bool hasPrice = kit.Price is not null || kit.Parts.Any(part => part.Price is not null);
        if (hasPrice && kit.Currency is null)
            context.AddFault(
                nameof(Kit.Currency),
                KitCodes.CurrencyMissing,
                "a price is stated and no currency",
                Contract.Schema.CurrencyAttribute.Accepted);
    }
}
