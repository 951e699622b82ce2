using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Contract.Kits;
using Cablewright.Contract.Words;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;

namespace Cablewright.Service.Kits;

/// <summary>A build and a kit to start from.</summary>
internal static class KitExample
{
    /// <summary>As JSON.</summary>
    public static JsonNode? Json() => JsonSerializer.SerializeToNode(
        new KitCheck { Build = QuickBuild.Example, Kit = Kit }, AnswerJson.Shapes.KitCheck);

    private static Kit Kit => new()
    {
        Name = "Amplifier wiring kit, 1/0 AWG copper",
        Price = 149.5,
        Currency = "EUR",
        Parts =
        [
            Wire(KitPartKind.PowerWire, "red", "18 ft"),
            Wire(KitPartKind.GroundWire, "black", "4 ft"),
            new KitPart { Kind = KitPartKind.Fuse, Rating = "150 A", Family = FuseFamilyName.Anl },
            new KitPart { Kind = KitPartKind.RingTerminal, Size = "1/0 AWG", Count = 2 },
            new KitPart { Kind = KitPartKind.Grommet },
            new KitPart { Kind = KitPartKind.Loom, Length = "6 ft" },
            new KitPart { Kind = KitPartKind.TurnOnLead, Size = "18 AWG", Length = "17 ft", Colour = "blue" },
            new KitPart { Kind = KitPartKind.SignalInterconnect, Length = "17 ft" },
            new KitPart { Kind = KitPartKind.HeatShrink },
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
