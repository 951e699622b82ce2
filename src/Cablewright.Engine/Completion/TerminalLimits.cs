using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completion;

/// <summary>The largest conductor that the terminals of each place accept: stated, or of an amplifier usual.</summary>
internal sealed class TerminalLimits(Build build, AssumptionList assumptions)
{
    private readonly Dictionary<string, TerminalLimit> limits = Read(build, assumptions);

    /// <summary>The terminals on a run with a known limit: of its places and of its fuse holders.</summary>
    public IEnumerable<TerminalLimit> On(Run run, string pointer)
    {
        if (limits.TryGetValue(run.From, out TerminalLimit from)) yield return from;
        if (limits.TryGetValue(run.To, out TerminalLimit to)) yield return to;
        if (run.Fuse?.LargestConductor is { } near) yield return new TerminalLimit(near, pointer
            + "/fuse/largestConductor", int.MaxValue);
        if (run.FarFuse?.LargestConductor is { } far) yield return new TerminalLimit(far, pointer
            + "/farFuse/largestConductor", int.MaxValue);
    }

    private static Dictionary<string, TerminalLimit> Read(Build build, AssumptionList assumptions)
    {
        var limits = new Dictionary<string, TerminalLimit>(StringComparer.Ordinal);
        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            Amplifier amplifier = build.Amplifiers[i];
            string pointer = $"/amplifiers/{i}/largestConductor";
            limits[amplifier.Id] = amplifier.LargestConductor is { } size
                ? new TerminalLimit(size, pointer, amplifier.Terminals ?? 1)
                : new TerminalLimit(UsualOf(amplifier, pointer, build, assumptions), pointer, amplifier.Terminals ?? 1, true);
        }

        for (int i = 0; i < build.Junctions.Count; i++)
        {
            if (build.Junctions[i].LargestConductor is { } size)
                limits[build.Junctions[i].Id] = new TerminalLimit(size, $"/junctions/{i}/largestConductor", int.MaxValue);
        }

        return limits;
    }

    /// <summary>
    /// What is usual matters, and is listed, where a conductor at the amplifier is larger or still to be chosen.
    /// </summary>
    private static ConductorSize UsualOf(Amplifier amplifier, string pointer, Build build, AssumptionList assumptions)
    {
        Figure gauge = assumptions.Ruleset.Terminal.UsualGauge(amplifier.RatedOutputWatts);
        var usual = ConductorSize.OfGauge((int)gauge.Value);
        if (build.Runs.Any(run => (run.From == amplifier.Id || run.To == amplifier.Id)
            && run.Conductor.Size?.FitsWhere(usual) is not true))
        {
            assumptions.Note(
                pointer, usual.Label,
                "what its terminals accept is not stated; a larger conductor ends at a reducer or a distribution block before it",
                gauge.Citation);
        }

        return usual;
    }
}
