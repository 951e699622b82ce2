using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Contract.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Tests.Documents;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>Each figure of the supply is written by its name with six significant digits; what is not known is absent.</summary>
public class SupplyAnswerTests
{
    private static readonly Supply Full = new()
    {
        OperatingVolts = 14.2,
        LowestVolts = 11.5,
        PeakCurrentAmps = 91.75,
        AverageCurrentAmps = 32.5,
        AlternatorAvailableAmps = 59,
        IdleAvailableAmps = -7,
        EngineOffMinutes = 153.66666666666666,
        CoveredFromEngineRpm = 1120,
        Cases =
        [
            CaseOf(SupplyCaseName.AtSpeed, 59, 26.5, -32.75, null, 13.25),
            CaseOf(SupplyCaseName.Idle, -7, -39.5, -98.75, 104.5, 11.75),
            CaseOf(SupplyCaseName.EngineOff, -1.5, -34, -93.25, 153.5, null),
        ],
        Batteries = [BatteryOf(Chemistry.Agm, 12.8, 153.5)],
        Burst = new Burst { Milliseconds = 500, Amplifier = "bass", LowestVolts = 12.25, LowestVoltsWithoutCapacitors = 12 },
        Capacitors =
        [
            new CapacitorResult
            {
                At = "bass",
                Farads = 0.5,
                SeriesMilliohms = 1.5,
                DrawAmps = 92.5,
                FallVolts = 0.5,
                HoldsMilliseconds = 2,
                GivesJoules = 3.25,
            },
        ],
    };

    private static readonly Supply Bare = new()
    {
        OperatingVolts = 14.2,
        LowestVolts = 11.5,
        PeakCurrentAmps = 91.75,
        AverageCurrentAmps = 32.5,
        Cases = [CaseOf(SupplyCaseName.Idle, 1, 1, 1, null, null)],
        Batteries = [BatteryOf(Chemistry.LiFePo4, 13.3, null)],
        Burst = new Burst { Milliseconds = 500, Amplifier = "bass" },
        Capacitors = [],
    };

    [Fact]
    public void Every_figure_has_its_name()
    {
        AssertJson(
            """
            {
              "operatingVolts": 14.2, "lowestVolts": 11.5, "peakCurrentAmps": 91.75, "averageCurrentAmps": 32.5,
              "alternatorAvailableAmps": 59, "idleAvailableAmps": -7, "engineOffMinutes": 153.667, "coveredFromEngineRpm": 1120,
              "cases": [
                { "case": "at-speed", "availableAmps": 59, "averageBalanceAmps": 26.5, "peakBalanceAmps": -32.75,
                  "lowestVolts": 13.25 },
                { "case": "idle", "availableAmps": -7, "averageBalanceAmps": -39.5, "peakBalanceAmps": -98.75,
                  "minutesToLimit": 104.5, "lowestVolts": 11.75 },
                { "case": "engine-off", "availableAmps": -1.5, "averageBalanceAmps": -34, "peakBalanceAmps": -93.25,
                  "minutesToLimit": 153.5 }
              ],
              "batteries": [
                { "id": "starter", "chemistry": "agm", "restVolts": 12.8, "resistanceMilliohms": 4.5, "capacityAmpHours": 70,
                  "usableAmpHours": 35, "peukertExponent": 1.15, "engineOffMinutes": 153.5 }
              ],
              "burst": { "milliseconds": 500, "amplifier": "bass", "lowestVolts": 12.25, "lowestVoltsWithoutCapacitors": 12 },
              "capacitors": [
                { "at": "bass", "farads": 0.5, "seriesMilliohms": 1.5, "drawAmps": 92.5, "fallVolts": 0.5, "holdsMilliseconds": 2,
                  "givesJoules": 3.25 }
              ]
            }
            """,
            Full);
    }

    [Fact]
    public void What_is_not_known_is_absent() => AssertJson(
        """
        {
          "operatingVolts": 14.2, "lowestVolts": 11.5, "peakCurrentAmps": 91.75, "averageCurrentAmps": 32.5,
          "cases": [ { "case": "idle", "availableAmps": 1, "averageBalanceAmps": 1, "peakBalanceAmps": 1 } ],
          "batteries": [
            { "id": "starter", "chemistry": "lifepo4", "restVolts": 13.3, "resistanceMilliohms": 4.5, "capacityAmpHours": 70,
              "usableAmpHours": 35, "peukertExponent": 1.15 }
          ],
          "burst": { "milliseconds": 500, "amplifier": "bass" },
          "capacitors": []
        }
        """,
        Bare);

    [Theory]
    [InlineData(40.0, "{\"kind\":\"dc-dc-charger\",\"ratedAmps\":40,\"throughAmps\":32.5,\"lossVolts\":0}")]
    [InlineData(null, "{\"kind\":\"dc-dc-charger\",\"throughAmps\":32.5,\"lossVolts\":0}")]
    public void An_isolator_stands_with_its_run(double? rated, string expected)
    {
        var isolator = new IsolatorResult
        {
            Kind = IsolatorKind.DcDcCharger,
            RatedAmps = rated,
            ThroughAmps = 32.5,
            LossVolts = 0,
        };
        string written = Encoding.UTF8.GetString(AnswerJson.Write(isolator, AnswerJson.Shapes.IsolatorResult));
        Assert.Equal(expected, written);
        Assert.Empty(ContractSchemas.Faults("IsolatorResult", JsonNode.Parse(written)));
    }

    private static SupplyCase CaseOf(
        SupplyCaseName name, double available, double average, double peak, double? minutes, double? volts) => new()
        {
            Case = name,
            AvailableAmps = available,
            AverageBalanceAmps = average,
            PeakBalanceAmps = peak,
            MinutesToLimit = minutes,
            LowestVolts = volts,
        };

    private static BatteryResult BatteryOf(Chemistry chemistry, double rest, double? minutes) => new()
    {
        Id = "starter",
        Chemistry = chemistry,
        RestVolts = rest,
        ResistanceMilliohms = 4.5,
        CapacityAmpHours = 70,
        UsableAmpHours = 35,
        PeukertExponent = 1.15,
        EngineOffMinutes = minutes,
    };

    private static void AssertJson(string expected, Supply supply)
    {
        JsonNode written = JsonNode.Parse(AnswerJson.Write(supply, AnswerJson.Shapes.Supply))!;
        Assert.Equal(JsonNode.Parse(expected)!.ToJsonString(), written.ToJsonString());
        Assert.Empty(ContractSchemas.Faults("Supply", written));
    }
}
