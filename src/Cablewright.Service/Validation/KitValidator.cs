using Cablewright.Contract.Kits;
using Cablewright.Service.Problems;
using FluentValidation;

namespace Cablewright.Service.Validation;

/// <summary>Checks a kit.</summary>
internal sealed class KitValidator : ContractValidator<Kit>
{
    private static readonly KitValidator Instance = new();

    private KitValidator()
    {
        RuleForEach(kit => kit.Parts).SetValidator(new KitPartValidator());
        RuleFor(kit => kit).Custom(CheckCurrency);
    }

    /// <summary>Everything wrong with what a kit says.</summary>
    public static IReadOnlyList<Fault> FaultsOf(Kit kit) => ValidationFaults.FaultsOf(Instance, kit);

    private static void CheckCurrency(Kit kit, ValidationContext<Kit> context)
    {
        bool hasPrice = kit.Price is not null || kit.Parts.Any(part => part.Price is not null);
        if (hasPrice && kit.Currency is null)
            context.AddFault(
                nameof(Kit.Currency),
                ContentCodes.CurrencyMissing,
                "a price is stated and no currency",
                Contract.Schema.CurrencyAttribute.Accepted);
    }
}
