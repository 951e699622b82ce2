using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: DIN VDE 0298-4 group 3, single PVC cores (70 °C) in free air at 30 °C, spaced by a diameter or more.
/// </summary>
public class VdeFreeAirTests
{
    public static TheoryData<string, double> Rows()
    {
        var rows = new TheoryData<string, double>();
        foreach (PublishedRow row in PublishedTable.Read("vde-0298-4-group-3"))
            rows.Add(row["area_mm2"] + " mm2", row.Number("a_30c_70c_pvc"));
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_heat_balance_agrees_within_15_percent(string size, double amps)
    {
        var balance = HeatBalance.Of(Conductor.Of(ConductorSize.Of(size), Material.Copper));
        Near.Relative(amps, balance.CurrentAt(70, 30), 0.15, size);
    }
}
