using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Changes;

/// <summary>A build with the edits of an answer made, read from their pointers and texts as a caller would.</summary>
internal static class Edited
{
    public static Build With(this Build build, IEnumerable<Edit> edits) => edits.Aggregate(build, With);

    private static Build With(Build build, Edit edit)
    {
        string[] at = edit.Pointer.Split('/')[1..];
        return (at[0], at[1]) switch
        {
            ("sizing", "sizes") => build with
            {
                Sizing = build.Sizing with { Sizes = [.. build.Sizing.Sizes, ConductorSize.Of(edit.To!)] },
            },
            ("sizing", _) => build with
            {
                Sizing = build.Sizing with { Materials = [.. build.Sizing.Materials, TradeWords.Parse<Material>(edit.To!)] },
            },
            ("amplifiers", _) =>
                build with { Amplifiers = Replaced(build.Amplifiers, at[1], each => With(each, at[2], edit.To!)) },
            ("runs", _) => build with { Runs = Replaced(build.Runs, at[1], each => With(each, at[2..], edit.To)) },
            _ => build with
            {
                Vehicle = build.Vehicle with
                {
                    Batteries = Replaced(build.Vehicle.Batteries, at[2], each => at[3] == "capacity"
                        ? each with { CapacityAmpHours = Number(edit.To!) }
                        : each with { ReserveMinutes = null }),
                },
            },
        };
    }

    private static Amplifier With(Amplifier amplifier, string member, string to) => member switch
    {
        "ratedOutput" => amplifier with { RatedOutputWatts = Number(to) },
        "ratedInputCurrent" => amplifier with { RatedInputAmps = Number(to) },
        _ => amplifier with { OnBoardFuseAmps = Number(to) },
    };

    private static Run With(Run run, string[] at, string? to) => at[0] switch
    {
        "length" => run with { LengthMetres = Metres(to!) },
        "conductor" => run with { Conductor = With(run.Conductor, at[1], to!) },
        "fuse" => run with { Fuse = With(run.Fuse ?? new FuseWish(), at[1], to) },
        "farFuse" => run with { FarFuse = With(run.FarFuse ?? new FuseWish(), at[1], to) },
        _ => run with { Isolator = run.Isolator! with { RatedAmps = Number(to!) } },
    };

    private static ConductorWish With(ConductorWish conductor, string member, string to) => member switch
    {
        "size" => conductor with { Size = ConductorSize.Of(to) },
        "material" => conductor with { Material = TradeWords.Parse<Material>(to) },
        "count" => conductor with { Count = (int)Number(to) },
        _ => conductor with { InsulationCelsius = Number(to) },
    };

    private static FuseWish With(FuseWish fuse, string member, string? to) => member switch
    {
        "fitted" => fuse with { Fitted = to == "true" },
        "rating" => fuse with { RatingAmps = Number(to!) },
        "family" => fuse with { Family = TradeWords.Parse<FuseFamilyName>(to!) },
        "distanceFromSource" => fuse with { DistanceMetres = Metres(to!) },
        "perConductor" => fuse with { PerConductor = to == "true" },
        "voltageRating" => fuse with { VoltageRatingVolts = null },
        _ => fuse with { InterruptingRatingAmps = null },
    };

    private static T[] Replaced<T>(IReadOnlyList<T> all, string index, Func<T, T> change) =>
        [.. all.Select((each, i) => i == int.Parse(index, CultureInfo.InvariantCulture) ? change(each) : each)];

    private static double Number(string text) => (double)Decimal(text);

    public static double Metres(string text) => (double)(Decimal(text) * (text.Split(' ')[1] switch
    {
        "ft" => 0.3048m,
        "in" => 0.0254m,
        "cm" => 0.01m,
        _ => 1,
    }));

    public static decimal Decimal(string text) => decimal.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture);
}
