using Cablewright.Contract.Reference;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/batteries</c>.</summary>
internal static class BatteryTables
{
    private static readonly JsonAnswer Table = TaggedAnswer.Fixed(Read(), AnswerJson.Shapes.BatteryReference);

    public static Operation Operation => new(
        "readBatteries", Tag.Reference, "Read the battery tables",
        "Rest voltages by chemistry and state of charge, with sources.")
    {
        IsCacheable = true,
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/reference/batteries", Answer).DescribedAs<BatteryReference>(Operation);

    internal static BatteryReference Read() => new() { RestVoltages = [.. RulesetLibrary.Newest.RestVoltages.All.Select(Row)] };

    private static JsonAnswer Answer() => Table;

    private static RestVoltageEntry Row(RestVoltageRow row) => new()
    {
        Chemistry = TradeWords.Parse<Chemistry>(row.Chemistry),
        StateOfCharge = row.StateOfCharge,
        Volts = row.Volts,
        Source = row.Source,
        Provenance = row.Provenance,
    };
}
