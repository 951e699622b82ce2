using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Engine.Tests.Sizing;
using Cablewright.Reports.Assessments;

namespace Cablewright.Engine.Tests.Numerics;

/// <summary>
/// What does not depend on the machine: the work that whole assessments count, in runs solved, and the bytes that they allocate.
/// A twentieth more than what is kept fails; where that is meant,
/// <c>CABLEWRIGHT_WORK=file dotnet test tests/Cablewright.Engine.Tests -c Release --filter WorkGate</c> writes what to keep.
/// </summary>
public class WorkGateTests
{
    private const double MostOver = 1.05;

    private static readonly string Kept = Path.Combine(AppContext.BaseDirectory, "Golden", "work.csv");

    private static readonly (string Name, Build Build)[] Panel =
    [
        ("nine runs given", StarBuild.Small),
        ("nine runs open", StarBuild.Open(StarBuild.Small)),
        ("nine runs given, one too thin", StarBuild.WithThinMain(StarBuild.Small)),
        ("nine runs open, too long", StarBuild.Open(StarBuild.Small) with { Limits = new Limits { MaxDropVolts = 0.1 } }),
        ("a product page", new Build
        {
            Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = 750 }],
            Runs = [new Run { Id = "feed", From = "battery", To = "bass", LengthMetres = 5 }],
        }),
        ("two amplifiers of a shop", OfShop(2)),
        ("four amplifiers of a shop", OfShop(4)),
        ("six amplifiers of a shop", OfShop(6)),
        ("five hundred and twelve runs given", StarBuild.Given(64, 512, 20)),
    ];

    public static TheoryData<string> Names => [.. Panel.Select(each => each.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Takes_no_more_work_and_memory_than_is_kept(string name)
    {
        Build build = Panel.Single(each => each.Name == name).Build;
        Measure(build);
        (double units, double kilobytes) = Measure(build);
        if (Environment.GetEnvironmentVariable("CABLEWRIGHT_WORK") is { } file)
        {
            lock (Panel)
                File.AppendAllText(file, string.Create(CultureInfo.InvariantCulture, $"{name};{units:F0};{kilobytes:F0}\n"));
        }

        string[] row = File.ReadLines(Kept).Select(line => line.Split(';')).Single(each => each[0] == name);
        Assert.InRange(units, 1, MostOver * double.Parse(row[1], CultureInfo.InvariantCulture));
#if !DEBUG
        Assert.InRange(kilobytes, 1, MostOver * double.Parse(row[2], CultureInfo.InvariantCulture));
#endif
    }

    /// <summary>The runs solved and the memory; the second time nothing is compiled or read any more.</summary>
    private static (double Units, double Kilobytes) Measure(Build build)
    {
        WorkMeter meter = WorkBudgets.MeterFor(build);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assessor.Assess(build, RulesetLibrary.Newest, meter);
        return (meter.Used, (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0);
    }

    private static Build OfShop(int amplifiers) => Enumerable.Range(400_000, 100)
        .Select(seed => new ShopBuilds(seed).Any()).First(build => build.Amplifiers.Count == amplifiers);
}
