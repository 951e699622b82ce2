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
                    now.Pointer + "/conductor/insulationRating",
                    now.Wish.InsulationCelsius is { } stated ? Steps.Text(stated, "C") : null, Steps.Text(celsius, "C")),
            ],
            Words = $"use cable rated {build.Phrase.Temperature(celsius)} in run \"{now.Id}\" in place of "
                + build.Phrase.Temperature(now.InsulationCelsius),
            Share = celsius / now.InsulationCelsius - 1,
            Runs = [now.Id],
        });
    }

    /// <summary>An isolator rated for the continuous current through it.</summary>
    public static Change Isolator(CompleteBuild build, Violation overRated)
    {
        CompleteRun run = build.Runs[overRated.Index];
        WrittenFigure to = Steps.Up(overRated.Measured, "A");
        return new Change
        {
            Kind = ChangeKind.Isolator,
            Apply = changed => changed.WithRun(
                overRated.Index, each => each with { Isolator = each.Isolator! with { RatedAmps = to.Value } }),
            Edits = [new Edit(run.Pointer + "/isolator/ratedCurrent", Steps.Text(overRated.Limit, "A"), to.Text)],
            Words = $"use an isolator rated {to.Text} on run \"{run.Id}\" in place of {Steps.Text(overRated.Limit, "A")}",
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
            return new Change
            {
                Kind = ChangeKind.Battery,
                Apply = changed => With(changed, battery, each => each with { CapacityAmpHours = to, ReserveMinutes = null }),
                Edits = [.. Edits(stated, $"/vehicle/batteries/{battery}/", to)],
                Words = $"use a battery of {Steps.Text(to, "Ah")} as \"{stated.Id}\" in place of {Phrase.Number(now)} Ah",
                Share = to / now - 1,
            };
        });
    }

    private static IEnumerable<Edit> Edits(Battery stated, string at, double to)
    {
        yield return new Edit(
            at + "capacity", stated.CapacityAmpHours is { } now ? Steps.Text(now, "Ah") : null, Steps.Text(to, "Ah"));
        if (stated.ReserveMinutes is { } minutes) yield return new Edit(at + "reserveCapacity", Steps.Text(minutes, "min"), null);
    }

    private static Build With(Build build, int index, Func<Battery, Battery> change) => build with
    {
        Vehicle = build.Vehicle with
        {
            Batteries = [.. build.Vehicle.Batteries.Select((battery, each) => each == index ? change(battery) : battery)],
        },
    };
}
