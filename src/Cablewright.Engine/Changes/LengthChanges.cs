using Cablewright.Engine.Builds;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Shorter runs.</summary>
internal static class LengthChanges
{
    /// <summary>One run, ever shorter.</summary>
    public static Ladder Of(Build build, int run)
    {
        Run stated = build.Runs[run];
        return Ladder.Of(WrittenSteps.LengthsBelow(stated.LengthMetres, build.Units), to => new Change
        {
            Kind = ChangeKind.Length,
            Apply = changed => changed.WithRun(run, each => each with { LengthMetres = to.Value }),
            Edits = [EditOf(build, run, to)],
            Steps = [new Step.Shorten(stated.Id, to, WrittenSteps.Length(stated.LengthMetres, build.Units))],
            Share = 1 - to.Value / stated.LengthMetres,
            Runs = [stated.Id],
        });
    }

    /// <summary>All stated runs, ever shorter by the same share.</summary>
    public static Ladder OfAll(Build build) => new(100 - WrittenSteps.LeastPercent, place =>
    {
        int percent = 100 - place;
        WrittenFigure?[] to = [.. build.Runs.Select(run => WrittenSteps.LengthPart(run.LengthMetres, percent, build.Units))];
        int[] shortened = [.. Enumerable.Range(0, to.Length).Where(run => to[run] is not null)];
        return new Change
        {
            Kind = ChangeKind.Length,
            Apply = changed => changed with
            {
                Runs = [.. changed.Runs.Select((run, index) =>
                    index < to.Length && to[index] is { } shorter ? run with { LengthMetres = shorter.Value } : run)],
            },
            Edits = [.. shortened.Select(run => EditOf(build, run, to[run]!.Value))],
            Steps = [new Step.ShortenAll(percent)],
            Share = place / 100.0,
            Parts = shortened.Length,
            Runs = [.. shortened.Select(run => build.Runs[run].Id)],
        };
    });

    private static Edit EditOf(Build build, int run, WrittenFigure to) => new(
        new Target(Part.Run, run, Member.Length),
        Held.Of(WrittenSteps.Length(build.Runs[run].LengthMetres, build.Units)), Held.Of(to));
}
