using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Contract.Audits;
using Cablewright.Service.Answers;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Audits;

/// <summary>A bench report to start from.</summary>
internal static class AuditExample
{
    /// <summary>As JSON.</summary>
    public static JsonNode? Json() => JsonSerializer.SerializeToNode(
        new BenchReport
        {
            Claim = new CableClaim { Size = "4 AWG", Material = Material.Copper },
            Strands = new StrandMeasurement { Count = 1568, Diameter = "0.12 mm", DiameterUncertainty = "0.002 mm" },
            Resistance = new ResistanceMeasurement { Resistance = "4.97 mOhm", Length = "5 m", Temperature = "21 C" },
            Mass = new MassMeasurement { Mass = "32.2 g", Length = "20 cm", LengthUncertainty = "1 mm" },
        },
        AnswerJson.Shapes.BenchReport);
}
