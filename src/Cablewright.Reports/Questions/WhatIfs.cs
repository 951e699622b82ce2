using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Loads;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Questions;

/// <summary>A question, and the build with the answers that one would expect.</summary>
/// <param name="At">Where the answer belongs.</param>
/// <param name="Key">What is asked, in the catalogue.</param>
/// <param name="Values">Of what it is asked.</param>
/// <param name="Answers">The build with each answer put in.</param>
internal sealed record WhatIf(Target At, string Key, Params Values, IReadOnlyList<Build> Answers)
{
    /// <summary>The question, put to a person.</summary>
    /// <param name="why">What the answer could change.</param>
    /// <param name="assumed">What is taken in its place, if anything.</param>
    /// <param name="speech">Makes the sentence.</param>
    public FollowUp Ask(Message why, string? assumed, Speech speech) => new()
    {
        Pointer = Pointers.Of(At),
        Question = speech.Text("question." + Key, Values),
        Why = why.Text,
        Where = speech.Text($"question.{Key}.where", []),
        Answer = ExpectedAnswers.At(At, assumed),
        Params = Values.And(why.Params).OrNone,
    };

    /// <summary>Who can answer: whoever wants the build is asked before anybody has to measure or to look for a sheet.</summary>
    public Answerer By { get; init; }

    /// <summary>Whether the answers speak of the supply alone, which no choice of conductors looks at.</summary>
    public bool IsOfSupply { get; init; }

    /// <summary>
    /// What the answers can cure where they can make nothing worse, since what is assumed is judged at its worse end already;
    /// empty: they can do more than that.
    /// </summary>
    public IReadOnlyList<ViolationKind> Cures { get; init; } = [];
}

/// <summary>Who can answer a question, the one to be asked first first.</summary>
internal enum Answerer
{
    /// <summary>A customer, who looks at the parts or knows what he wants.</summary>
    Customer,

    /// <summary>Whoever has a meter or a tape at the vehicle.</summary>
    Installer,

    /// <summary>A maker's data sheet.</summary>
    DataSheet,
}

/// <summary>The questions that a build leaves open, one for each kind of value, asked where it weighs most.</summary>
/// <remarks>
/// What is tried in place of an answer is what one would expect of it at either end, and no verdict rests on it: the answer does,
/// once it is given.
/// </remarks>
internal static class WhatIfs
{
    /// <summary>Class D in planning, 0.75 to 0.85; class AB in trade statements, 0.50 to 0.75. Common practice, no
    /// source.</summary>
    private const double HighEfficiency = 0.85, LowEfficiency = 0.5;

    /// <summary>A service specification, 13.7 to 14.6 V at 20 °C; a training text on variable charging, cruise with a full
    /// battery. Both read.</summary>
    private const double HighChargingVolts = 14.6, LowChargingVolts = 12.8;

    /// <summary>Cross-linked cable; plain cable. Common practice, no source.</summary>
    private const double HighInsulationCelsius = 125, LowInsulationCelsius = 75;

    /// <summary>Trade practice. Common practice, no source.</summary>
    private const double ShortDistanceMetres = 0.15, LongDistanceMetres = 0.6;

    /// <summary>Factory alternators of large cars and light lorries; of small cars. Common practice, no source.</summary>
    private const double LargeAlternatorAmps = 180, SmallAlternatorAmps = 70;

    /// <summary>From the battery to the wing. Common practice, no source.</summary>
    private const double StrapMetres = 0.4;

    /// <summary>An amplifier's label may state the most that it ever gives, about twice what it gives continuously. Common
    /// practice, no source.</summary>
    private const double LabelOverContinuous = 2;

    /// <summary>UL 248-15 parts at 125 V direct current, as quoted from ABYC. Read.</summary>
    private const double HighInterruptingAmps = 20_000;

    /// <summary>All of them.</summary>
    public static IEnumerable<WhatIf> For(CompleteBuild build) =>
        new (Answerer By, WhatIf? WhatIf)[]
            {
                (Answerer.Customer, OwnFuses(build)),
                (Answerer.Customer, Programme(build)),
                (Answerer.Customer, Alternator(build)),
                (Answerer.Customer, Route(build)),
                (Answerer.Customer, Material(build)),
                (Answerer.Installer, Insulation(build)),
                (Answerer.Installer, Charging(build)),
                (Answerer.Installer, FuseDistance(build)),
                (Answerer.Installer, Strap(build)),
                (Answerer.DataSheet, Efficiency(build)),
                (Answerer.DataSheet, Converter(build)),
                (Answerer.DataSheet, Interrupting(build)),
                (Answerer.DataSheet, OpeningTimes(build)),
            }
            .Where(each => each.WhatIf is not null)
            .Select(each => each.WhatIf! with { By = each.By });

    /// <summary>What an amplifier's own fuses let through is the least doubtful word on what it is.</summary>
    private static WhatIf? OwnFuses(CompleteBuild build)
    {
        var drawn = build.Stated.Amplifiers.Zip(build.Draws).ToDictionary(each => each.First.Id, each => RatedAmps(each.Second));
        return ForAmplifiers(
            build,
            amplifier => amplifier is { OnBoardFuseAmps: null, RatedInputAmps: null, RatedOutputWatts: not null },
            Member.OnBoardFuse, "own-fuses",
            amplifier => amplifier with { OnBoardFuseAmps = drawn[amplifier.Id] / LabelOverContinuous });
    }

    private static WhatIf? Programme(CompleteBuild build) => ForAmplifiers(
        build,
        amplifier => amplifier.Programme is null && amplifier.CrestFactorDecibels is null && !IsFuseAlone(amplifier),
        Member.Programme, "programme",
        amplifier => amplifier with { Programme = Vocabulary.Programme.Compressed },
        amplifier => amplifier with { Programme = Vocabulary.Programme.Dynamic });

    private static WhatIf? Efficiency(CompleteBuild build) => ForAmplifiers(
        build,
        amplifier => amplifier.Efficiency is null && amplifier.RatedInputAmps is null && amplifier.RatedOutputWatts is not null,
        Member.Efficiency, "efficiency",
        amplifier =>
            amplifier with { Efficiency = HighEfficiency, Class = amplifier.Class ?? AmplifierClass.D },
        amplifier => amplifier with { Efficiency = LowEfficiency });

    private static WhatIf? Converter(CompleteBuild build) => ForAmplifiers(
        build,
        amplifier => amplifier.PowerSupply is null && !IsFuseAlone(amplifier),
        Member.PowerSupply, "power-supply",
        amplifier => amplifier with { PowerSupply = PowerSupply.Unregulated });

    private static WhatIf? Charging(CompleteBuild build)
    {
        if (build.Stated.Vehicle.ChargingVolts is not null) return null;
        Vehicle vehicle = build.Stated.Vehicle;
        return new WhatIf(
            Target.Of(Part.Vehicle, Member.ChargingVoltage), "charging-voltage", [],
            [
                build.Stated with { Vehicle = vehicle with { ChargingVolts = HighChargingVolts } },
                build.Stated with { Vehicle = vehicle with { ChargingVolts = LowChargingVolts } },
            ]);
    }

    private static WhatIf? Alternator(CompleteBuild build)
    {
        if (build.Supply.HotAmps is not null) return null;
        return new WhatIf(
            Target.Of(Part.Alternator, Member.RatedCurrent), "alternator-rating", [],
            [WithRating(LargeAlternatorAmps), WithRating(SmallAlternatorAmps)])
        {
            IsOfSupply = true,
        };

        Build WithRating(double amps)
        {
            Vehicle vehicle = build.Stated.Vehicle;
            Alternator rated = (vehicle.Alternator ?? new Alternator()) with { RatedAmps = amps };
            return build.Stated with { Vehicle = vehicle with { Alternator = rated } };
        }
    }

    private static WhatIf? Route(CompleteBuild build) => ForRuns(
        build, run => run.Route is null, new Target(Part.Run, null, Member.Route), "route",
        run => run with { Route = Vocabulary.Route.Cabin },
        run => run with { Route = Vocabulary.Route.EngineBay });

    private static WhatIf? Insulation(CompleteBuild build) => ForRuns(
        build, run => run.Conductor is { Size: not null, InsulationCelsius: null },
        new Target(Part.Conductor, null, Member.InsulationRating),
        "insulation-rating",
        run => run with { Conductor = run.Conductor with { InsulationCelsius = HighInsulationCelsius } },
        run => run with { Conductor = run.Conductor with { InsulationCelsius = LowInsulationCelsius } });

    private static WhatIf? Material(CompleteBuild build) => ForRuns(
        build, run => run.Conductor is { Size: not null, Material: null }, new Target(Part.Conductor, null, Member.Material),
        "material",
        run => run with { Conductor = run.Conductor with { Material = Vocabulary.Material.CopperCladAluminium } });

    private static WhatIf? FuseDistance(CompleteBuild build) => ForRuns(
        build, run => run.Fuse is { RatingAmps: not null, DistanceMetres: null },
        new Target(Part.Fuse, null, Member.DistanceFromSource),
        "fuse-distance",
        run => run with { Fuse = run.Fuse! with { DistanceMetres = ShortDistanceMetres } },
        run => run with { Fuse = run.Fuse! with { DistanceMetres = LongDistanceMetres } });

    private static WhatIf? Interrupting(CompleteBuild build) => Curing(
        [ViolationKind.InterruptingTooLow, ViolationKind.InterruptingUnknown],
        ForRuns(
            build, run => run.Fuse is { RatingAmps: not null, InterruptingRatingAmps: null },
            new Target(Part.Fuse, null, Member.InterruptingRating),
            "interrupting-rating",
            run => run with { Fuse = run.Fuse! with { InterruptingRatingAmps = HighInterruptingAmps } }));

    /// <summary>A part as quick, or as slow, as a band from memory may be off.</summary>
    private static WhatIf? OpeningTimes(CompleteBuild build)
    {
        FuseFamilies families = build.Ruleset.FuseFamilies;
        return Curing(
            [
                ViolationKind.FuseMayNotOpen, ViolationKind.FuseClearsTooLate, ViolationKind.BandRecalled,
                ViolationKind.OverloadHurts, ViolationKind.FuseOpensOnNote,
            ],
            ForRuns(
                build,
                run => run.Fuse is { RatingAmps: { } rating, OpeningTimes.Count: 0 } && !BandOf(run.Fuse, rating).IsRead,
                new Target(Part.Fuse, null, Member.OpeningTimes), "opening-times",
                run => run with { Fuse = Timed(run.Fuse!, isSlow: false) },
                run => run with { Fuse = Timed(run.Fuse!, isSlow: true) }));

        TimeCurrentBand BandOf(FuseWish fuse, double rating) =>
            (fuse.Family is { } family ? families.Of(family) : families.UsualFor(rating)).TimeCurrentBand;

        FuseWish Timed(FuseWish fuse, bool isSlow)
        {
            TimeCurrentBand band = BandOf(fuse, fuse.RatingAmps!.Value);
            double factor = isSlow ? band.Uncertainty.Value : 1 / band.Uncertainty.Value;
            return fuse with
            {
                OpeningTimes =
                    [.. band.Points.Select(point => new OpeningTime(
                        point.ShareOfRating, point.FastestSeconds * factor, point.SlowestSeconds * factor))],
            };
        }
    }

    /// <summary>The vehicle's own strap as strong as the strongest feed, or as thin as straps are.</summary>
    private static WhatIf? Strap(CompleteBuild build)
    {
        if (build.Body.AssumedStrapOf(build.ChargingBattery) < 0) return null;
        bool isOfEngine = build.Body.AtEngine.Contains(build.ChargingBattery);
        string from = isOfEngine ? PlaceNames.Engine : build.Batteries[build.ChargingBattery].Id;
        ConductorSize thin = Ampacities.LeastStrap(build.Ruleset);
        ConductorSize thick = build.Runs.Select(run => run.Given?.Size).OfType<ConductorSize>().Append(thin)
            .Append(CandidateList.Stocked(build.Stated.Units)[^1]).MaxBy(size => size.MetalAreaMm2)!;
        return new WhatIf(
            new Target(Part.Run), isOfEngine ? "engine-strap" : "strap",
            new Params { [isOfEngine ? "place" : "battery"] = from },
            [With(thick), With(thin)]);

        Build With(ConductorSize size) => build.Stated with
        {
            Runs =
            [
                .. build.Stated.Runs,
                new Run
                {
                    Id = "the strap of the battery",
                    From = from,
                    To = PlaceNames.Body,
                    Side = Side.Return,
                    LengthMetres = StrapMetres,
                    Route = Vocabulary.Route.EngineBay,
                    Conductor = new ConductorWish
                    {
                        Size = size,
                        Material = Vocabulary.Material.Copper,
                        InsulationCelsius = build.Ruleset.Return.StrapInsulation.Value,
                    },
                },
            ],
        };
    }

    private static WhatIf? Curing(IReadOnlyList<ViolationKind> kinds, WhatIf? whatIf) =>
        whatIf is null ? null : whatIf with { Cures = kinds };

    private static bool IsFuseAlone(Amplifier amplifier) =>
        amplifier.RatedOutputWatts is null && amplifier.RatedInputAmps is null;

    /// <summary>Asks about the amplifier that draws most; answers for all that lack the value.</summary>
    private static WhatIf? ForAmplifiers(
        CompleteBuild build, Func<Amplifier, bool> lacks, Member member, string key,
        params Func<Amplifier, Amplifier>[] answers)
    {
        IReadOnlyList<Amplifier> amplifiers = build.Stated.Amplifiers;
        int[] lacking = [.. Enumerable.Range(0, amplifiers.Count).Where(i => lacks(amplifiers[i]))];
        if (lacking.Length == 0) return null;
        int largest = lacking.MaxBy(i => Significant.Round(InputWatts(build.Draws[i])));
        return new WhatIf(
            new Target(Part.Amplifier, largest, member), key, new Params { ["amplifier"] = amplifiers[largest].Id },
            [.. answers.Select(answer => build.Stated with
            {
                Amplifiers = [.. amplifiers.Select(amplifier => lacks(amplifier) ? answer(amplifier) : amplifier)],
            })]);
    }

    /// <summary>Asks about the longest run that lacks the value; answers for all.</summary>
    private static WhatIf? ForRuns(
        CompleteBuild build, Func<Run, bool> lacks, Target at, string key, params Func<Run, Run>[] answers)
    {
        IReadOnlyList<Run> runs = build.Stated.Runs;
        int[] lacking = [.. Enumerable.Range(0, runs.Count).Where(i => lacks(runs[i]))];
        if (lacking.Length == 0) return null;
        int longest = lacking.MaxBy(i => Significant.Round(runs[i].LengthMetres));
        return new WhatIf(
            at with { Index = longest }, key, new Params { ["run"] = runs[longest].Id },
            [.. answers.Select(answer => build.Stated with { Runs = [.. runs.Select(run => lacks(run) ? answer(run) : run)] })]);
    }

    private static double RatedAmps(AmplifierDraw draw) => Engine.Network.CircuitSolver.Amps(draw.Full, draw.RatingVolts);

    private static double InputWatts(AmplifierDraw draw) => draw.RatingVolts * RatedAmps(draw);
}
