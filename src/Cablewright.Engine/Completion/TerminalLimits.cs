using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completion;

/// <summary>The largest conductor that the terminals of each place accept: stated, or of an amplifier usual.</summary>
internal sealed class TerminalLimits(Build build, AssumptionList assumptions)
{
    private readonly Dictionary<string, TerminalLimit> limits = Read(build, assumptions);

    /// <summary>The terminals on a run with a known limit: of its places and of its fuse holders.</summary>
    public IEnumerable<TerminalLimit> On(Run run, int? index)
    {
        if (limits.TryGetValue(run.From, out TerminalLimit from)) yield return from;
        if (limits.TryGetValue(run.To, out TerminalLimit to)) yield return to;
        if (run.Fuse?.LargestConductor is { } near)
            yield return new TerminalLimit(near, new Target(Part.Fuse, index, Member.LargestConductor), int.MaxValue);
        if (run.FarFuse?.LargestConductor is { } far)
            yield return new TerminalLimit(far, new Target(Part.FarFuse, index, Member.LargestConductor), int.MaxValue);
    }

    private static Dictionary<string, TerminalLimit> Read(Build build, AssumptionList assumptions)
    {
        var limits = new Dictionary<string, TerminalLimit>(StringComparer.Ordinal);
        for (int i = 0; i < build.Amplifiers.Count; i++)
        {
            Amplifier amplifier = build.Amplifiers[i];
            var at = new Target(Part.Amplifier, i, Member.LargestConductor);
            limits[amplifier.Id] = amplifier.LargestConductor is { } size
                ? new TerminalLimit(size, at, amplifier.Terminals ?? 1)
                : new TerminalLimit(UsualOf(amplifier, at, build, assumptions), at, amplifier.Terminals ?? 1, IsAssumed: true);
        }

        for (int i = 0; i < build.Junctions.Count; i++)
        {
            if (build.Junctions[i].LargestConductor is { } size)
                limits[build.Junctions[i].Id] =
                    new TerminalLimit(size, new Target(Part.Junction, i, Member.LargestConductor), int.MaxValue);
        }

        return limits;
    }

    /// <summary>
    /// What is usual matters, and is listed, where a conductor at the amplifier is larger or still to be chosen.
    /// </summary>
    private static ConductorSize UsualOf(Amplifier amplifier, Target at, Build build, AssumptionList assumptions)
    {
        Figure gauge = assumptions.Ruleset.Terminal.UsualGauge(amplifier.RatedOutputWatts);
        var usual = ConductorSize.OfGauge((int)gauge.Value);
        if (build.Runs.Any(run => run.EndsAt(amplifier.Id)
            && run.Conductor.Size?.FitsWhere(usual) is not true))
            assumptions.Note(new AssumedSize(AssumptionKind.TerminalSize, at, usual, gauge));

        return usual;
    }
}
