using System.Collections.Concurrent;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>How often each outcome came about, so that it can be judged what the cases reach.</summary>
internal sealed class Outcomes
{
    private readonly ConcurrentDictionary<string, int> counts = new(StringComparer.Ordinal);
    private (int Number, TimeSpan Time) slowest;

    /// <summary>How often an outcome came about.</summary>
    public int this[string outcome] => counts.GetValueOrDefault(outcome);

    /// <summary>Counts an outcome.</summary>
    public void Add(string outcome) => counts.AddOrUpdate(outcome, 1, (_, count) => count + 1);

    /// <summary>Notes how long a case took, so that the slowest can be looked at by itself.</summary>
    public void Took(int number, TimeSpan time)
    {
        lock (counts)
        {
            if (time > slowest.Time) slowest = (number, time);
        }
    }

    /// <summary>Writes them all, the most frequent first, and which case took longest.</summary>
    public void Write(ITestOutputHelper output)
    {
        output.WriteLine($"slowest: {slowest.Time.TotalMilliseconds:0} ms, {FuzzRun.Again(slowest.Number)}");
        foreach ((string outcome, int count) in counts.OrderByDescending(entry => entry.Value))
            output.WriteLine($"{count,7} {outcome}");
    }
}
