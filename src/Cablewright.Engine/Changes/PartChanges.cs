using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Parts of a higher rating: insulation, isolators, batteries.</summary>
internal static class PartChanges
{
    private const int LargestTimes = 10;
    private const double CapacityStep = 5;

    /// <summary>Insulation of the higher ratings that the table knows.</summary>
    public static Ladder Insulation(CompleteBuild build, int run)
    {
        CompleteRun now = build.Runs[run];
        int[] higher = [.. build.Ruleset.Ampacity.Ratings.Where(celsius => celsius > now.InsulationCelsius)];
        return Ladder.Of(higher, celsius => new Change
        {
            Kind = ChangeKind.Insulation,
            Apply = changed => changed.WithConductor(run, wish => wish with { InsulationCelsius = celsius }),
            Edits =
            [
                new Edit(
                    new Target(Part.Conductor, run, Member.InsulationRating),
                    now.Wish.InsulationCelsius is { } stated ? Held.Of(WrittenFigure.Of(stated, WrittenUnit.Celsius)) : null,
                    Held.Of(WrittenFigure.Of(celsius, WrittenUnit.Celsius))),
            ],
            Steps = [new Step.UseInsulation(now.Id, celsius, now.InsulationCelsius)],
            Share = celsius / now.InsulationCelsius - 1,
            Runs = [now.Id],
        });
    }

    /// <summary>An isolator of the next usual rating that bears the continuous current through it.</summary>
    public static Change Isolator(CompleteBuild build, Violation overRated)
    {
        CompleteRun run = build.Runs[overRated.Index];
        WrittenFigure to = build.Ruleset.IsolatorRatings.Next(overRated.Measured) is { } usual
            ? WrittenFigure.Of(usual, WrittenUnit.Ampere)
            : WrittenSteps.Up(overRated.Measured, WrittenUnit.Ampere);
        var from = WrittenFigure.Of(overRated.Limit, WrittenUnit.Ampere);
        return new Change
        {
            Kind = ChangeKind.Isolator,
            Apply = changed => changed.WithRun(
                overRated.Index, each => each with { Isolator = each.Isolator! with { RatedAmps = to.Value } }),
            Edits =
            [
                new Edit(new Target(Part.Isolator, overRated.Index, Member.RatedCurrent), Held.Of(from), Held.Of(to)),
            ],
            Steps = [new Step.UseIsolator(run.Id, to, from)],
            Share = to.Value / overRated.Limit - 1,
            Runs = [run.Id],
        };
    }

    /// <summary>A battery of ever more capacity.</summary>
    public static Ladder Battery(CompleteBuild build, int battery)
    {
        double now = build.Batteries[battery].Energy.AmpHours;
        Battery stated = build.Stated.Vehicle.Batteries[battery];
        double first = Math.Floor(now / CapacityStep) * CapacityStep;
        return new Ladder((int)((LargestTimes - 1) * now / CapacityStep), place =>
        {
            double to = first + place * CapacityStep;
            var written = WrittenFigure.Of(to, WrittenUnit.AmpereHour);
            return new Change
            {
                Kind = ChangeKind.Battery,
                Apply = changed => With(changed, battery, each => each with { CapacityAmpHours = to, ReserveMinutes = null }),
                Edits = [.. Edits(stated, new Target(Part.Battery, battery), written)],
                Steps = [new Step.UseBattery(stated.Id, written, now)],
                Share = to / now - 1,
            };
        });
    }

    private static IEnumerable<Edit> Edits(Battery stated, Target at, WrittenFigure to)
    {
        yield return new Edit(
            at[Member.Capacity],
            stated.CapacityAmpHours is { } now ? Held.Of(WrittenFigure.Of(now, WrittenUnit.AmpereHour)) : null,
            Held.Of(to));
        if (stated.ReserveMinutes is { } minutes)
            yield return new Edit(at[Member.ReserveCapacity], Held.Of(WrittenFigure.Of(minutes, WrittenUnit.Minute)), null);
    }

    private static Build With(Build build, int index, Func<Battery, Battery> change) => build with
    {
        Vehicle = build.Vehicle with
        {
            Batteries = [.. build.Vehicle.Batteries.Select((battery, each) => each == index ? change(battery) : battery)],
        },
    };
}
