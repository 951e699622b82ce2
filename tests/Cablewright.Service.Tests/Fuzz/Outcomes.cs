using System.Collections.Concurrent;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>How often each outcome came about, so that it can be judged what the cases reach.</summary>
internal sealed class Outcomes
{
    private readonly ConcurrentDictionary<string, int> counts = new(StringComparer.Ordinal);

    /// <summary>How often an outcome came about.</summary>
    public int this[string outcome] => counts.GetValueOrDefault(outcome);

    /// <summary>Counts an outcome.</summary>
    public void Add(string outcome) => counts.AddOrUpdate(outcome, 1, (_, count) => count + 1);

    /// <summary>Writes them all, the most frequent first.</summary>
    public void Write(ITestOutputHelper output)
    {
        foreach ((string outcome, int count) in counts.OrderByDescending(entry => entry.Value))
            output.WriteLine($"{count,7} {outcome}");
    }
}
