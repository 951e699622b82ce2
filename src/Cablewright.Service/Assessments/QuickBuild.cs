using Cablewright.Contract.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Assessments;

/// <summary>The build that a quick query stands for: one battery, one amplifier, one run between them.</summary>
internal static class QuickBuild
{
    private const string BatteryId = "battery";
    private const string AmplifierId = "amplifier";
    private const string RunId = "supply";

    /// <summary>A build to start from.</summary>
    public static Build Example => Of(new Dictionary<string, string>
    {
        [QuickQuery.RatedOutput] = "1000 W",
        [QuickQuery.Length] = "16 ft",
        [QuickQuery.Size] = "1/0 AWG",
        [QuickQuery.MaterialName] = "copper",
        [QuickQuery.ChargingVoltage] = "13.8 V",
        [QuickQuery.Efficiency] = "80 %",
    });

    /// <summary>The build of a query without faults.</summary>
    public static Build Of(IReadOnlyDictionary<string, string> values) => new()
    {
        Units = Word<UnitSystem>(values, QuickQuery.Units),
        Vehicle = new Vehicle
        {
            ChargingVoltage = values.GetValueOrDefault(QuickQuery.ChargingVoltage),
            Alternator = values.TryGetValue(QuickQuery.AlternatorCurrent, out string? alternator)
                ? new Alternator { RatedCurrent = alternator }
                : null,
            Batteries = [new Battery { Id = BatteryId }],
        },
        Amplifiers =
        [
            new Amplifier
            {
                Id = AmplifierId,
                RatedOutput = values.GetValueOrDefault(QuickQuery.RatedOutput),
                Efficiency = values.GetValueOrDefault(QuickQuery.Efficiency),
                Fuse = values.GetValueOrDefault(QuickQuery.AmplifierFuse),
                AmplifierClass = Word<AmplifierClass>(values, QuickQuery.AmplifierClass),
                Programme = Word<Programme>(values, QuickQuery.Programme),
            },
        ],
        Runs =
        [
            new Run
            {
                Id = RunId,
                From = BatteryId,
                To = AmplifierId,
                Length = values[QuickQuery.Length],
                Conductor = ConductorOf(values),
                Fuse = values.TryGetValue(QuickQuery.FuseRating, out string? rating) ? new Fuse { Rating = rating } : null,
            },
        ],
    };

    private static Conductor? ConductorOf(IReadOnlyDictionary<string, string> values)
    {
        var conductor = new Conductor
        {
            Size = values.GetValueOrDefault(QuickQuery.Size),
            Material = Word<Material>(values, QuickQuery.MaterialName),
        };
        return conductor == new Conductor() ? null : conductor;
    }

    private static T? Word<T>(IReadOnlyDictionary<string, string> values, string name) where T : struct, Enum =>
        values.TryGetValue(name, out string? word) && TradeWords.TryParse(word, out T value) ? value : null;
}
