using Cablewright.Contract.Reference;
using Cablewright.Contract.Words;
using Cablewright.Engine;
using Cablewright.Engine.Supply;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/batteries</c>.</summary>
internal static class BatteryTables
{
    private static readonly FixedAnswer Table = FixedAnswer.Of(Read(), AnswerJson.Shapes.BatteryReference);

    /// <summary>Answers with the batteries' figures.</summary>
    public static IResult Answer() => Table.Answer();

    internal static BatteryReference Read() => new() { RestVoltages = [.. RestVoltage.All.Select(Row)] };

    private static RestVoltageEntry Row(RestVoltageRow row) => new()
    {
        Chemistry = (Chemistry)TradeWords.Parse<Engine.Builds.Chemistry>(row.Chemistry),
        StateOfCharge = row.StateOfCharge,
        Volts = row.Volts,
        Source = row.Source,
        Provenance = row.Provenance,
    };
}
