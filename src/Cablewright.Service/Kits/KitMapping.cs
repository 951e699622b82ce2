using Cablewright.Contract.Kits;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Kits;

/// <summary>From the contract's kit to the engine's.</summary>
internal static class KitMapping
{
    /// <summary>The same kit in SI units.</summary>
    public static Engine.Kits.Kit ToEngine(Kit kit) =>
        new(kit.Sku, kit.Name, kit.Price, kit.Currency, [.. kit.Parts.Select(PartOf)]);

    private static Engine.Kits.KitPart PartOf(KitPart part) => new()
    {
        Kind = part.Kind,
        Size = StatedSize.Of(part.Size),
        Material = part.Material,
        LengthMetres = Stated<KitPart>.Value(part.Length, nameof(part.Length)),
        StrandCount = part.StrandCount,
        StrandMetres = Stated<KitPart>.Value(part.StrandDiameter, nameof(part.StrandDiameter)),
        InsulationCelsius = Stated<KitPart>.Value(part.InsulationRating, nameof(part.InsulationRating)),
        Colour = part.Colour,
        RatingAmps = Stated<KitPart>.Value(part.Rating, nameof(part.Rating)),
        Family = part.Family,
        LargestConductor = StatedSize.Of(part.LargestConductor),
        Ways = part.Ways,
        Count = part.Count ?? 1,
    };
}
