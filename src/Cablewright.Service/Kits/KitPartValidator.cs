using System.Text.Json;
using Cablewright.Contract.Kits;
using Cablewright.Service.Validation;
using Cablewright.Vocabulary;
using FluentValidation;

namespace Cablewright.Service.Kits;

/// <summary>
/// Checks one part of a kit: that it states what a part of its kind is known by, and nothing that it cannot have.
/// </summary>
internal sealed class KitPartValidator : ContractValidator<KitPart>
{
    private static readonly KitPartKind[] Heavy = [KitPartKind.PowerWire, KitPartKind.GroundWire];

    private static readonly KitPartKind[] Cables = [.. Heavy, KitPartKind.TurnOnLead, KitPartKind.SpeakerWire];

    /// <summary>Members that only some kinds have, and the kinds that must have them.</summary>
    private static readonly (string Member, Func<KitPart, object?> Stated, KitPartKind[] Owners, KitPartKind[] Needed)[] Rules =
    [
        (nameof(KitPart.Size), part => part.Size,
            [.. Cables, KitPartKind.RingTerminal, KitPartKind.HeatShrink, KitPartKind.Loom, KitPartKind.Grommet], Heavy),
        (nameof(KitPart.Material), part => part.Material, [.. Cables, KitPartKind.SignalInterconnect], []),
        (nameof(KitPart.Length), part => part.Length,
            [.. Cables, KitPartKind.SignalInterconnect, KitPartKind.Loom, KitPartKind.HeatShrink, KitPartKind.Ties], Heavy),
        (nameof(KitPart.StrandCount), part => part.StrandCount, Cables, []),
        (nameof(KitPart.StrandDiameter), part => part.StrandDiameter, Cables, []),
        (nameof(KitPart.InsulationRating), part => part.InsulationRating, Cables, []),
        (nameof(KitPart.Rating), part => part.Rating, [KitPartKind.Fuse], [KitPartKind.Fuse]),
        (nameof(KitPart.Family), part => part.Family, [KitPartKind.Fuse], []),
        (nameof(KitPart.LargestConductor), part => part.LargestConductor,
            [KitPartKind.Fuse, KitPartKind.DistributionBlock], []),
        (nameof(KitPart.Ways), part => part.Ways, [KitPartKind.DistributionBlock], []),
    ];

    public KitPartValidator() => RuleFor(part => part).Custom(CheckKind);

    private static void CheckKind(KitPart part, ValidationContext<KitPart> context)
    {
        foreach ((string member, Func<KitPart, object?> stated, KitPartKind[] owners, KitPartKind[] needed) in Rules)
        {
            if (stated(part) is null && needed.Contains(part.Kind))
                context.AddFault(
                    member,
                    KitCodes.PartMemberMissing,
                    $"a part of kind \"{part.Kind.Word()}\" needs this",
                    $"\"{JsonNamingPolicy.CamelCase.ConvertName(member)}\" stated");
            else if (stated(part) is not null && !owners.Contains(part.Kind))
                context.AddFault(
                    member,
                    KitCodes.PartMemberForeign,
                    $"a part of kind \"{part.Kind.Word()}\" does not have this",
                    $"only for {string.Join(", ", owners.Select(owner => owner.Word()))}");
        }
    }
}
