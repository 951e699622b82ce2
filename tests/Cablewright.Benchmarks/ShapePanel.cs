using System.Diagnostics;
using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>
/// What every slow shape costs, in the meter's units and in processor time, both as multiples of an ordinary build of nine given
/// runs in the same run.
/// </summary>
internal static class ShapePanel
{
    private const int WarmUpTimes = 8000, OrdinaryTimes = 500, ShapeTimes = 3;

    /// <summary>Prints the panel at the size that callers without a key and those with one may send.</summary>
    /// <param name="named">The shapes to print; empty: all.</param>
    public static void Print(string[] named)
    {
        (double units, double milliseconds) = Ordinary();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"ordinary build of nine given runs: {units:0} units, {milliseconds:0.000} ms, "
                + $"{1e6 * milliseconds / units:0} ns a unit"));
        foreach ((int amplifiers, int runs, int batteries) in new[] { (16, 96, 8), (64, 512, 16) })
        {
            Console.WriteLine($"\n{amplifiers} amplifiers, {runs} runs, {batteries} batteries");
            Console.WriteLine("| shape | units / ordinary | time / ordinary | time / units |");
            Console.WriteLine("| --- | --- | --- | --- |");
            foreach ((string name, Build build) in SlowShapes.All(amplifiers, runs, batteries)
                .Where(shape => named.Length == 0 || named.Contains(shape.Name)))
            {
                (double shapeUnits, double shapeMilliseconds) = Cost(build);
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {name} | {shapeUnits / units:0} | {shapeMilliseconds / milliseconds:0} | "
                    + $"{shapeMilliseconds / milliseconds * units / shapeUnits:0.00} |"));
            }
        }
    }

    private static (double Units, double Milliseconds) Ordinary()
    {
        for (int i = 0; i < WarmUpTimes; i++) Once(StarBuild.Small);
        return Median([.. Enumerable.Range(0, OrdinaryTimes).Select(_ => Once(StarBuild.Small))]);
    }

    private static (double Units, double Milliseconds) Cost(Build build) =>
        Median([.. Enumerable.Range(0, ShapeTimes).Select(_ => Once(build))]);

    private static (double Units, double Milliseconds) Median((double Units, double Milliseconds)[] all) =>
        (all[0].Units, all.Select(each => each.Milliseconds).Order().ElementAt(all.Length / 2));

    private static (double Units, double Milliseconds) Once(Build build)
    {
        var meter = WorkBudgets.MeterFor(build);
        long start = Stopwatch.GetTimestamp();
        try
        {
            Assessor.Assess(build, RulesetLibrary.Newest, meter);
        }
        catch (WorkExceededException)
        {
            Console.Write("exceeded: ");
        }

        return (meter.Used, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }
}
