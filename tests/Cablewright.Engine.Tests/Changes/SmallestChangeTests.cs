using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Changes;

/// <summary>
/// Each kind of change on a circuit whose smallest change is worked out by hand. "The golden case" is the folder
/// Golden/one-amplifier-one-run: 1000 W over 16 ft of 1/0. Its conductors there and back are 1.775356 and 0.218425 mohm and lose
/// 1.993781 mohm x 91.8955 A = 0.183220 V, which is what a limit is for; with 0.184 V allowed it stands, and a little more length
/// or power, or a little less metal, does not.
/// </summary>
public class SmallestChangeTests
{
    private const double JustAbove = 0.184;

    [Fact]
    public void A_build_that_stands_needs_none() => Assert.Null(Assessed.WithAdvice(OneAmplifier()).Feasibility);

    /// <summary>A quarter of a foot more takes another 0.0762 m x 0.364 mohm/m x 91.9 A = 2.6 mV.</summary>
    [Fact]
    public void The_longest_run_is_that_of_the_golden_case()
    {
        Change change =
            Of(Limited(OneAmplifier().WithRun("main", run => run with { LengthMetres = 8 })), ChangeKind.Length, "main");
        Assert.Equal([EditOf("/runs/0/length", "26.2467 ft", "16 ft")], change.Edits);
        Assert.Equal("Make run \"main\" no longer than 16 ft (now 26.2467 ft).", change.Message);
        Assert.Equal(1 - 16 * 0.3048 / 8, change.Share, 6);
    }

    /// <summary>
    /// A constant 60 A keeps its conductor at the same temperature whatever its length, so V = I rho k / A (1 + a (T - 20)) (L +
    /// return) is a straight line of L. Sources: IACS copper, ASTM B258 area of 6 AWG, a = 0.00393, lay factor
    /// as in the golden case; T is taken from the answer.
    /// </summary>
    [Theory]
    [InlineData(0.35)]
    [InlineData(0.5)]
    [InlineData(0.65)]
    public void The_longest_run_of_a_constant_current_follows_from_the_resistance_of_its_conductor(double limit)
    {
        Build build = ConstantCurrent(60).WithRun("main", run => run with { LengthMetres = 12 });
        build = build with { Units = UnitSystem.Metric, Limits = build.Limits with { MaxDropVolts = limit } };
        Assessment answer = Assessed.WithAdvice(build);
        double ohmsPerMetre =
            1.7241e-2 * 1.02 / 13.3018 * (1 + 0.00393 * (answer.Runs[0].TemperatureCelsius - 20));
        double longest = limit / 60 / ohmsPerMetre - 1;
        decimal metres = decimal.Floor((decimal)longest / 0.05m) * 0.05m;
        Assert.Equal(metres, Edited.Decimal(Of(build, ChangeKind.Length, "main").Edits[0].To!));
        Assert.NotEqual(Verdict.Fail, With(metres).Verdict);
        Assert.Equal(Verdict.Fail, With(metres + 0.05m).Verdict);

        Assessment With(decimal length) =>
            Assessed.WithAdvice(build.WithRun("main", run => run with { LengthMetres = (double)length }));
    }

    /// <summary>A build may state no run below 1 cm, so that no change names one.</summary>
    [Fact]
    public void The_shortest_of_runs_is_not_cut_to_nothing()
    {
        Build build = OneAmplifier();
        Run main = build.Runs[0] with { LengthMetres = 0.01 };
        Run[] chain = [.. Enumerable.Range(0, 60).Select(piece => main with
        {
            Id = $"piece{piece}",
            From = piece == 0 ? main.From : $"joint{piece}",
            To = piece == 59 ? main.To : $"joint{piece + 1}",
            Fuse = piece == 0 ? main.Fuse : null,
        })];
        build = build with { Runs = [.. chain, .. build.Runs.Skip(1)], Limits = build.Limits with { MaxDropVolts = 0.02 } };
        Feasibility feasibility = Assessed.WithAdvice(build).Feasibility!;
        Edit[] lengths = [.. feasibility.Changes.Append(feasibility.Nearest).OfType<Change>()
            .SelectMany(change => change.Edits).Where(edit => edit.Pointer.EndsWith("/length", StringComparison.Ordinal))];
        Assert.All(lengths, edit => Assert.True(Edited.Metres(edit.To!) >= 0.01, edit.To));
    }

    /// <summary>1010 W draw 92.9 A and lose 0.1853 V in 1.995 mohm: u = (14 + sqrt(196 - 4 x 1262.5 x 0.0043281)) / 2.</summary>
    [Fact]
    public void The_largest_power_is_that_of_the_golden_case()
    {
        Build build = Limited(OneAmplifier().WithAmplifier(amplifier => amplifier with { RatedOutputWatts = 1500 }));
        Change change = Of(build, ChangeKind.Power);
        Assert.Equal([EditOf("/amplifiers/0/ratedOutput", "1500 W", "1000 W")], change.Edits);
        Assert.Equal(["bass"], change.Amplifiers);
    }

    /// <summary>1 AWG has 42.4 mm2 in place of 53.5 and loses 0.095 mohm/m x 4.9 m x 92 A = 0.04 V more.</summary>
    [Fact]
    public void The_smallest_conductor_is_that_of_the_golden_case()
    {
        Change change =
            Of(Limited(OneAmplifier().WithRun("main", run => run.Sized("4 AWG"))), ChangeKind.Conductor, "main");
        Assert.Equal([EditOf("/runs/0/conductor/size", "4 AWG", "1/0 AWG")], change.Edits);
        Assert.Equal(4.8768 * (53.4751 - 21.1511) * 8.89 * 1.02, change.AddedMassGrams, 1.0);
    }

    [Fact]
    public void Copper_in_place_of_clad_aluminium_is_the_golden_case()
    {
        Build build = Limited(OneAmplifier().WithRun("main", run => run with
        {
            Conductor = run.Conductor with { Material = Material.CopperCladAluminium },
        }));
        Assert.Equal(
            [EditOf("/runs/0/conductor/material", "copper-clad-aluminium", "copper")],
            Of(build, ChangeKind.Material, "main").Edits);
    }

    /// <summary>
    /// A fuse of 100 A for each conductor opens above 100 A, be it late: 210 A need three. 6 AWG bears 111.7 A.
    /// </summary>
    [Fact]
    public void As_many_conductors_in_parallel_as_their_fuses_need()
    {
        Build build = ConstantCurrent(210).WithRun("main", run => run with
        {
            Conductor = run.Conductor with { Count = 2 },
            Fuse = run.Fuse! with { PerConductor = true },
        }).WithRun("return", run => run.Sized("4/0 AWG"));
        Assert.Equal([EditOf("/runs/0/conductor/count", "2", "3")], Of(build, ChangeKind.Parallel, "main").Edits);
    }

    /// <summary>
    /// 80 A open under 95 A; 4 AWG bears 160 A x sqrt(65/75) = 149 A, and a fuse of at most 1.5 times that, 223 A. 95 A want
    /// 95 / 0.8 = 119 A of an ANL: 125 A, which 4 AWG bears.
    /// </summary>
    [Theory]
    [InlineData(80)]
    [InlineData(225)]
    public void A_fuse_that_carries_the_load_and_guards_the_conductor(double rating)
    {
        Build build = ConstantCurrent(95).WithRun("main", run => run.Sized("4 AWG") with { Fuse = Anl(rating) })
            .WithRun("return", run => run.Sized("4 AWG"));
        Assert.Equal([EditOf("/runs/0/fuse/rating", $"{rating} A", "125 A")], Of(build, ChangeKind.Fuse, "main").Edits);
    }

    [Fact]
    public void A_fuse_where_there_is_none()
    {
        Change change = Of(ConstantCurrent(60).WithRun("main", run => run with { Fuse = NoFuse }), ChangeKind.Fuse, "main");
        Assert.Equal(EditOf("/runs/0/fuse/fitted", "false", "true"), change.Edits[0]);
        Assert.Equal(1, change.Share);
    }

    /// <summary>The limit is 18 in.</summary>
    [Fact]
    public void A_fuse_nearer_its_source()
    {
        Build build = ConstantCurrent(60).WithRun("main", run => run with { Fuse = Anl(100) with { DistanceMetres = 0.6096 } });
        Assert.Equal(
            [EditOf("/runs/0/fuse/distanceFromSource", "24 in", "18 in")], Of(build, ChangeKind.FuseDistance, "main").Edits);
    }

    /// <summary>
    /// 100 A x sqrt((60 - 40)/(60 - 30)) = 65 A of 6 AWG with insulation of 60 C by the table, and no less than 100 A from 90 C.
    /// </summary>
    [Fact]
    public void Insulation_that_bears_the_heat()
    {
        Build build = ConstantCurrent(70)
            .WithRun("main", run => run with { Conductor = run.Conductor with { InsulationCelsius = 60 } });
        Change change = Of(build, ChangeKind.Insulation, "main");
        Assert.Equal("60 C", change.Edits[0].From);
        Assert.Equal(Verdict.Fail, Assessed.WithAdvice(build).Verdict);
    }

    /// <summary>In 130 C nothing that the table knows may carry anything.</summary>
    [Fact]
    public void Where_nothing_helps_it_says_so_and_names_the_nearest()
    {
        Build build = ConstantCurrent(60);
        build = build with { Limits = build.Limits with { CabinCelsius = 130 } };
        Feasibility feasibility = Assessed.WithAdvice(build).Feasibility!;
        Assert.Empty(feasibility.Changes);
        Assert.True(feasibility.Complete);
        Assert.Equal(["run.surroundings-above-insulation"], feasibility.BrokenRules);
        Assert.Contains("No change was found", feasibility.Summary, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fail, feasibility.Nearest!.Verdict);
    }

    /// <summary>Each of two feeds alone bears too little: both have to change, and nothing else.</summary>
    [Fact]
    public void Several_conductors_where_no_single_one_does()
    {
        Build build = OneAmplifier() with
        {
            Amplifiers = [new Amplifier { Id = "a", OnBoardFuseAmps = 60 }, new Amplifier { Id = "b", OnBoardFuseAmps = 60 }],
            Runs =
            [
                Run("main", "starter", "block", 1, "4/0 AWG") with { Fuse = Anl(300) },
                Run("feed-a", "block", "a", 1, "12 AWG") with { Fuse = Anl(80) },
                Run("feed-b", "block", "b", 1, "12 AWG") with { Fuse = Anl(80) },
                Run("return-a", "a", "starter", 1, "4 AWG"),
                Run("return-b", "b", "starter", 1, "4 AWG"),
            ],
        };
        Feasibility feasibility = Assessed.WithAdvice(build).Feasibility!;
        Change both = feasibility.Changes.First(change => change.Kind is not (ChangeKind.Power or ChangeKind.Length));
        Assert.Equal(["feed-a", "feed-b"], both.Runs);
        Assert.DoesNotContain(feasibility.Changes, change => change.Kind is ChangeKind.Conductor && change.Runs.Count == 1);
        Assert.NotEqual(Verdict.Fail, Assessed.WithAdvice(build.With(both.Edits)).Verdict);
    }

    /// <summary>
    /// A thin main run whose fuse besides is too far from the battery: conductor, fuse and its place have to change.
    /// </summary>
    [Theory]
    [InlineData(150.0, 0.6096)]
    [InlineData(300.0, 0.6096)]
    [InlineData(null, null)]
    public void A_fuse_in_a_wrong_place_changes_with_its_conductor(double? rating, double? metres)
    {
        FuseWish fuse = rating is { } amps ? Anl(amps) with { DistanceMetres = metres } : NoFuse;
        Build build = OneAmplifier().WithRun("main", run => run.Sized("6 AWG") with { Fuse = fuse });
        Feasibility feasibility = Assessed.WithAdvice(build).Feasibility!;
        Change change = feasibility.Changes.First(each => each.Kind is ChangeKind.Combination);
        Assert.Equal(["main"], change.Runs);
        Assert.NotEqual(Verdict.Fail, Assessed.WithAdvice(build.With(change.Edits)).Verdict);
    }

    /// <summary>Only sizes may be chosen that are too thin.</summary>
    [Fact]
    public void More_to_choose_from()
    {
        Build build = Limited(
            OneAmplifier().WithRun("main", run => run with { Conductor = new ConductorWish { Count = 1 }, Fuse = null })) with
        {
            Sizing = new SizingWishes { Sizes = [ConductorSize.Of("8 AWG"), ConductorSize.Of("4 AWG")] },
        };
        Assert.Equal([EditOf("/sizing/sizes/-", null, "1/0 AWG")], Of(build, ChangeKind.Choice).Edits);
    }

    private static Build Limited(Build build) => build with { Limits = build.Limits with { MaxDropVolts = JustAbove } };

    /// <summary>The smallest change of a kind, made: the build then stands.</summary>
    private static Change Of(Build build, ChangeKind kind, string? run = null)
    {
        Assessment answer = Assessed.WithAdvice(build);
        Assert.Equal(Verdict.Fail, answer.Verdict);
        Change change = answer.Feasibility!.Changes.First(
            each => each.Kind == kind && (run is null || each.Runs.SequenceEqual([run])));
        Assert.NotEqual(Verdict.Fail, Assessed.WithAdvice(build.With(change.Edits)).Verdict);
        return change;
    }

    private static Edit EditOf(string pointer, string? from, string? to) => new() { Pointer = pointer, From = from, To = to };
}
