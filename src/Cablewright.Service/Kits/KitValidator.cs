using System.Text.Json;
using Cablewright.Contract.Kits;
using Cablewright.Contract.Words;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Kits;

/// <summary>Checks what a kit says, whether it comes with a request or is to be stored.</summary>
internal sealed class KitValidator : ContractValidator<Kit>
{
    public KitValidator()
    {
        RuleFor(kit => kit).Custom(CheckCurrency);
        RuleForEach(kit => kit.Parts).SetValidator(new KitPartValidator());
    }

    private static void CheckCurrency(Kit kit, ValidationContext<Kit> context)
    {
        if (kit.Currency is null && (kit.Price is not null || kit.Parts.Any(part => part.Price is not null)))
            context.AddFault(
                nameof(Kit.Currency), ContentCodes.CurrencyMissing, "a price is stated without a currency",
                Contract.Schema.CurrencyAttribute.Accepted);
    }
}

/// <summary>Checks one part of a kit.</summary>
internal sealed class KitPartValidator : ContractValidator<KitPart>
{
    public KitPartValidator() => RuleFor(part => part).Custom(CheckMembers);

    private static void CheckMembers(KitPart part, ValidationContext<KitPart> context)
    {
        if (part.Kind is KitPartKind.PowerWire or KitPartKind.GroundWire)
        {
            Demand(part.Size, nameof(KitPart.Size), context);
            Demand(part.Length, nameof(KitPart.Length), context);
        }

        if (part.Kind is KitPartKind.Fuse) Demand(part.Rating, nameof(KitPart.Rating), context);
    }

    private static void Demand(string? value, string member, ValidationContext<KitPart> context)
    {
        if (value is not null) return;
        string name = JsonNamingPolicy.CamelCase.ConvertName(member);
        context.AddFault(
            member, ContentCodes.KitMemberMissing, $"a part of this kind states its {name}", $"\"{name}\"");
    }
}
