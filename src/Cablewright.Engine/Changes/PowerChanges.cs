using Cablewright.Engine.Builds;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>Less power.</summary>
internal static class PowerChanges
{
    /// <summary>One amplifier, ever smaller.</summary>
    public static Ladder Of(Build build, int amplifier)
    {
        Rating rating = RatingOf(build.Amplifiers[amplifier]);
        WrittenFigure[] smaller =
            [.. WrittenSteps.Below(rating.Value, rating.Unit).Where(to => to.Value >= rating.Least)];
        return Ladder.Of(smaller, to => new Change
        {
            Kind = ChangeKind.Power,
            Apply = changed => With(changed, amplifier, to.Value),
            Edits = [EditOf(build, amplifier, to)],
            Steps = [new Step.LimitAmplifier(build.Amplifiers[amplifier].Id, rating.Figure, to, rating.Written)],
            Share = 1 - to.Value / rating.Value,
            Amplifiers = [build.Amplifiers[amplifier].Id],
        });
    }

    /// <summary>All amplifiers, ever smaller by the same share.</summary>
    public static Ladder OfAll(Build build) => new(100 - WrittenSteps.LeastPercent, place =>
    {
        int percent = 100 - place;
        WrittenFigure[] to = [.. build.Amplifiers.Select(RatingOf).Select(rating => rating.Part(percent))];
        return new Change
        {
            Kind = ChangeKind.Power,
            Apply = changed => to.Select((rating, index) => (rating, index))
                .Aggregate(changed, (build, each) => With(build, each.index, each.rating.Value)),
            Edits = [.. to.Select((rating, amplifier) => EditOf(build, amplifier, rating))],
            Steps = [new Step.LimitAll(percent)],
            Share = place / 100.0,
            Parts = to.Length,
            Amplifiers = [.. build.Amplifiers.Select(amplifier => amplifier.Id)],
        };
    });

    private static Edit EditOf(Build build, int amplifier, WrittenFigure to)
    {
        Rating rating = RatingOf(build.Amplifiers[amplifier]);
        return new Edit(new Target(Part.Amplifier, amplifier, rating.Member), Held.Of(rating.Written), Held.Of(to));
    }

    /// <summary>The figure from which its draw is worked out.</summary>
    private static Rating RatingOf(Amplifier amplifier) => amplifier switch
    {
        { RatedInputAmps: { } amps } => new Rating(
            amps, 0.1, WrittenUnit.Ampere, Member.RatedInputCurrent, PowerFigure.InputCurrent),
        { RatedOutputWatts: { } watts } => new Rating(
            watts, 1, WrittenUnit.Watt, Member.RatedOutput, PowerFigure.Output),
        _ => new Rating(
            amplifier.OnBoardFuseAmps!.Value, 0.5, WrittenUnit.Ampere, Member.OnBoardFuse, PowerFigure.OwnFuses),
    };

    private static Build With(Build build, int index, double to) => build with
    {
        Amplifiers = [.. build.Amplifiers.Select((amplifier, each) => each != index ? amplifier : amplifier switch
        {
            { RatedInputAmps: not null } => amplifier with { RatedInputAmps = to },
            { RatedOutputWatts: not null } => amplifier with { RatedOutputWatts = to },
            _ => amplifier with { OnBoardFuseAmps = to },
        })],
    };

    /// <summary>A rated figure of an amplifier.</summary>
    /// <param name="Value">Its value.</param>
    /// <param name="Least">The least that a build can state.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Member">Where a build states it.</param>
    /// <param name="Figure">Which figure it is.</param>
    private readonly record struct Rating(double Value, double Least, WrittenUnit Unit, Member Member, PowerFigure Figure)
    {
        /// <summary>As a build writes it.</summary>
        public WrittenFigure Written => WrittenFigure.Of(Value, Unit);

        /// <summary>A share of it, but no less than a build can state.</summary>
        public WrittenFigure Part(int percent)
        {
            WrittenFigure part = WrittenSteps.Part(Value, percent, Unit);
            return part.Value >= Least ? part : WrittenFigure.Of(Least, Unit);
        }
    }
}
