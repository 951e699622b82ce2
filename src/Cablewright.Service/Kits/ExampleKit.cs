using Cablewright.Contract.Kits;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Kits;

/// <summary>A kit to start from, of a shop that does not exist.</summary>
internal static class ExampleKit
{
    public static Kit Kit { get; } = new()
    {
        Sku = "AK-150",
        Name = "Amplifier wiring kit, 1/0 AWG copper",
        Price = 149.5,
        Currency = "EUR",
        Parts =
        [
            Wire(KitPartKind.PowerWire, "red", "18 ft"),
            Wire(KitPartKind.GroundWire, "black", "4 ft"),
            new KitPart { Kind = KitPartKind.Fuse, Rating = "150 A", Family = FuseFamilyName.Anl, LargestConductor = "1/0 AWG" },
            new KitPart { Kind = KitPartKind.RingTerminal, Size = "1/0 AWG", Count = 2 },
            new KitPart { Kind = KitPartKind.Grommet },
            new KitPart { Kind = KitPartKind.Loom, Length = "6 ft" },
            new KitPart { Kind = KitPartKind.TurnOnLead, Size = "18 AWG", Length = "17 ft", Colour = "blue" },
            new KitPart { Kind = KitPartKind.SignalInterconnect, Length = "17 ft" },
            new KitPart { Kind = KitPartKind.SpeakerWire, Size = "14 AWG", Length = "30 ft" },
            new KitPart { Kind = KitPartKind.HeatShrink, Length = "1 ft" },
            new KitPart { Kind = KitPartKind.Ties, Count = 20 },
        ],
    };

    private static KitPart Wire(KitPartKind kind, string colour, string length) => new()
    {
        Kind = kind,
        Size = "1/0 AWG",
        Material = Material.Copper,
        Length = length,
        Colour = colour,
    };
}
