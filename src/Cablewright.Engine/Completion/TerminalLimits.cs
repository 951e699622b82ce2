using Cablewright.Engine.Builds;

namespace Cablewright.Engine.Completion;

/// <summary>The largest conductor that the terminals of each place accept, where it is stated.</summary>
internal sealed class TerminalLimits(Build build)
{
    private readonly Dictionary<string, TerminalLimit> limits = Read(build);

    /// <summary>The terminals on a run that state a limit: of its places and of its fuse holders.</summary>
    public IEnumerable<TerminalLimit> On(Run run, int? index)
    {
        if (limits.TryGetValue(run.From, out TerminalLimit from)) yield return from;
        if (limits.TryGetValue(run.To, out TerminalLimit to)) yield return to;
        if (run.Fuse?.LargestConductor is { } near)
            yield return new TerminalLimit(near, new Target(Part.Fuse, index, Member.LargestConductor), int.MaxValue);
        if (run.FarFuse?.LargestConductor is { } far)
            yield return new TerminalLimit(far, new Target(Part.FarFuse, index, Member.LargestConductor), int.MaxValue);
    }

    private static Dictionary<string, TerminalLimit> Read(Build build)
    {
        var limits = new Dictionary<string, TerminalLimit>(StringComparer.Ordinal);
        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            if (build.Amplifiers[i].LargestConductor is { } size)
                limits[build.Amplifiers[i].Id] = new TerminalLimit(
                    size, new Target(Part.Amplifier, i, Member.LargestConductor), build.Amplifiers[i].Terminals ?? 1);
        }

        for (int i = 0; i < build.Junctions.Count; i++)
        {
            if (build.Junctions[i].LargestConductor is { } size)
                limits[build.Junctions[i].Id] =
                    new TerminalLimit(size, new Target(Part.Junction, i, Member.LargestConductor), int.MaxValue);
        }

        return limits;
    }
}
