using System.Diagnostics;
using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Engine.Tests.Sizing;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>
/// How long what a shop sends takes, over three hundred random builds, in milliseconds and as multiples of an ordinary build of
/// nine given runs in the same run. Of each the least of three times counts.
/// </summary>
internal static class ShopPanel
{
    private const int WarmUpTimes = 4000, OrdinaryTimes = 100, Times = 3, Builds = 300;

    /// <summary>Prints the panel.</summary>
    public static void Print()
    {
        Build[] shop = [.. Enumerable.Range(0, Builds).Select(i => new ShopBuilds(300_000 + i).Any())];
        Build[] single = [.. shop.Where(build => build.Amplifiers.Count == 1)];
        for (int i = 0; i < WarmUpTimes; i++) Assessor.Assess(StarBuild.Small, RulesetLibrary.Newest);
        foreach (Build build in shop) Assessor.Assess(build, RulesetLibrary.Newest);
        double ordinary = Enumerable.Range(0, OrdinaryTimes)
            .Min(_ => Milliseconds(() => Assessor.Assess(StarBuild.Small, RulesetLibrary.Newest)));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"nine given runs: {ordinary:0.000} ms"));
        Console.WriteLine("| what | median | p99 | median, times ordinary | p99 |");
        Console.WriteLine("| --- | --- | --- | --- | --- |");
        Row("one amplifier, asked about", single, build => Assessor.Assess(build, RulesetLibrary.Newest), ordinary);
        Row("one to six amplifiers, the choice alone", shop, Choose, ordinary);
        Row("the same, asked about", shop, build => Assessor.Assess(build, RulesetLibrary.Newest), ordinary);
        Row(
            "the same where nothing serves, and what would", [.. shop.Select(Hopeless)],
            build => Assessor.Assess(build, RulesetLibrary.Newest), ordinary);
    }

    private static void Row(string what, Build[] builds, Action<Build> work, double ordinary)
    {
        double[] times = [.. builds.Select(build => Milliseconds(() => work(build))).Order()];
        double median = times[times.Length / 2], p99 = times[(int)(0.99 * times.Length)];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {what} | {median:0.00} ms | {p99:0.0} ms | {median / ordinary:0} | {p99 / ordinary:0} |"));
    }

    private static Build Hopeless(Build build) => build with { Limits = build.Limits with { MaxDropVolts = 0.1 } };

    private static void Choose(Build build) => Variant.Of(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity));

    private static double Milliseconds(Action work) => Enumerable.Range(0, Times).Min(_ =>
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    });
}
