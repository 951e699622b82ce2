using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// Random builds as a shop gets them: outputs and lengths of a usual job, little else stated, every conductor open. The same for
/// the same seed.
/// </summary>
internal sealed class ShopBuilds(int seed)
{
    private const double Foot = 0.3048;

    /// <summary>The fewer amplifiers, the larger: seldom more than 4000 W in all.</summary>
    private static readonly double[] Watts = [100, 150, 200, 300, 400, 500, 600, 750, 1000, 1200, 1500, 2000];

    private readonly Random random = new(seed);

    /// <summary>One amplifier by itself, or two to six behind a block, a few of them behind a second one.</summary>
    public Build Any()
    {
        int amplifiers = 1 + random.Next(6);
        Amplifier[] all = [.. Enumerable.Range(0, amplifiers).Select(index => Amplifier(index, Watts.Length - amplifiers + 1))];
        return new Build
        {
            Vehicle = new Vehicle { Batteries = [new Battery { Id = "battery" }] },
            Amplifiers = all,
            Runs = amplifiers == 1 ? Alone() : Distributed(amplifiers),
        };
    }

    private Run[] Alone() =>
        [Run("power0", "battery", "amplifier0", 10, 22), Run("ground0", "amplifier0", "body", 1.5, 3)];

    private Run[] Distributed(int amplifiers)
    {
        bool hasSecond = amplifiers > 3 && random.Next(2) == 0;
        return
        [
            Run("main", "battery", "block", 10, 20),
            .. hasSecond ? new[] { Run("link", "block", "second", 1, 6) } : [],
            .. Enumerable.Range(0, amplifiers).SelectMany(i => new[]
            {
                Run($"power{i}", hasSecond && i % 2 == 1 ? "second" : "block", $"amplifier{i}", 1, 5),
                Run($"ground{i}", $"amplifier{i}", "body", 1, 4),
            }),
        ];
    }

    private Amplifier Amplifier(int index, int choices)
    {
        double watts = Watts[random.Next(choices)];
        return new Amplifier
        {
            Id = $"amplifier{index}",
            RatedOutputWatts = watts,
            Class = random.Next(2) == 0 ? null : Draw(AmplifierClass.AB, AmplifierClass.D),
            OnBoardFuseAmps = random.Next(3) == 0 ? 10 * Math.Ceiling(watts / 110) : null,
        };
    }

    private Run Run(string id, string from, string to, double leastFeet, double mostFeet) => new()
    {
        Id = id,
        From = from,
        To = to,
        LengthMetres = Foot * Math.Round(2 * (leastFeet + (mostFeet - leastFeet) * random.NextDouble())) / 2,
        Route = random.Next(3) == 0 ? Route.Cabin : null,
    };

    private T Draw<T>(params T[] among) => among[random.Next(among.Length)];
}
