using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Engine.Results;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Tests.Documents;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>Every figure of the supply that the engine gives is in the answer, and what it does not give is absent.</summary>
public class SupplyAnswerTests
{
    private static readonly SupplyResult Full = new(14.2, 11.5, 91.75, 32.5, 59, -7)
    {
        EngineOffMinutes = 153.66666666666666,
        CoveredFromEngineRpm = 1120,
        Cases =
        [
            new(SupplyCaseName.AtSpeed, 59, 26.5, -32.75, null, 13.25),
            new(SupplyCaseName.Idle, -7, -39.5, -98.75, 104.5, 11.75),
            new(SupplyCaseName.EngineOff, -1.5, -34, -93.25, 153.5, null),
        ],
        Batteries = [new("starter", Chemistry.Agm, 12.8, 4.5, 70, 35, 1.15, 153.5)],
        Burst = new(500, "bass", 12.25, 12),
        Capacitors = [new("bass", 0.5, 1.5, 92.5, 0.5, 2, 3.25)],
    };

    private static readonly SupplyResult Bare = new(14.2, 11.5, 91.75, 32.5, null, null)
    {
        Cases = [new(SupplyCaseName.Idle, 1, 1, 1, null, null)],
        Batteries = [new("starter", Chemistry.LiFePo4, 13.3, 4.5, 70, 35, 1.15, null)],
        Burst = new(500, "bass", null, null),
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
    public void What_the_engine_does_not_give_is_absent() => AssertJson(
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
        var isolator = new IsolatorResult(IsolatorKind.DcDcCharger, rated, 32.5, 0);
        string written = JsonSerializer.Serialize(RunAnswerMapping.IsolatorOf(isolator)!, AnswerJson.Shapes.IsolatorResult);
        Assert.Equal(expected, written);
        Assert.Empty(ContractSchemas.Faults("IsolatorResult", JsonNode.Parse(written)));
        Assert.Null(RunAnswerMapping.IsolatorOf(null));
    }

    private static void AssertJson(string expected, SupplyResult supply)
    {
        JsonNode written = JsonSerializer.SerializeToNode(SupplyAnswerMapping.ToContract(supply), AnswerJson.Shapes.Supply)!;
        Assert.Equal(JsonNode.Parse(expected)!.ToJsonString(), written.ToJsonString());
        Assert.Empty(ContractSchemas.Faults("Supply", written));
    }
}
