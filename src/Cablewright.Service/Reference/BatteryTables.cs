using Cablewright.Contract.Reference;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/batteries</c>.</summary>
internal static class BatteryTables
{
    private static readonly FixedAnswer Table = FixedAnswer.Of(Read(), AnswerJson.Shapes.BatteryReference);

    /// <summary>Answers with the batteries' figures.</summary>
    public static IResult Answer() => Table.Answer();

    internal static BatteryReference Read() => new() { RestVoltages = [.. RulesetLibrary.Newest.RestVoltages.All.Select(Row)] };

    private static RestVoltageEntry Row(RestVoltageRow row) => new()
    {
        Chemistry = TradeWords.Parse<Chemistry>(row.Chemistry),
        StateOfCharge = row.StateOfCharge,
        Volts = row.Volts,
        Source = row.Source,
        Provenance = row.Provenance,
    };
}
