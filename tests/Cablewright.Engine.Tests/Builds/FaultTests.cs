using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Reports.Faults;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Builds;

/// <summary>What makes it impossible to say what a build means, and the pointer that leads to it.</summary>
public class FaultTests
{
    private static readonly (string Code, string Pointer, Build Build)[] Faulty =
    [
        ("id.taken", "/amplifiers/1/id", OneAmplifier() with
        {
            Amplifiers = [OneAmplifier().Amplifiers[0], OneAmplifier().Amplifiers[0]],
        }),
        ("id.taken", "/amplifiers/0/id", OneAmplifier().WithAmplifier(amplifier => amplifier with { Id = "starter" })),
        ("id.taken", "/amplifiers/0/id", OneAmplifier().WithAmplifier(amplifier => amplifier with { Id = "body" })),
        ("id.taken", "/amplifiers/0/id", OneAmplifier().WithAmplifier(amplifier => amplifier with { Id = "engine" })),
        ("engine.not-connected", "/runs/3/to", WithAlternatorCable(100, 2) with
        {
            Runs =
            [
                .. OneAmplifier().Runs, Run("case", "alternator", "engine", 1, "4 AWG"),
                Run("charge", "alternator", "starter", 1, "4 AWG"),
            ],
        }),
        ("engine.not-connected", "/runs/3/from", OneAmplifier().With(Run("ground", "engine", "bass", 1, "4 AWG"))),
        ("alternator.place-unknown", "/vehicle/alternator/at", OneAmplifier() with
        {
            Vehicle = OneAmplifier().Vehicle with { Alternator = new Alternator { At = "engine" } },
        }),
        ("id.taken", "/runs/3/id", OneAmplifier().With(Run("main", "starter", "bass", 1, "4 AWG"))),
        ("run.ends-equal", "/runs/0/to", OneAmplifier().WithRun("main", run => run with { To = "starter" })),
        ("amplifier.draw-unknown", "/amplifiers/0", OneAmplifier()
            .WithAmplifier(amplifier => new Amplifier { Id = amplifier.Id })),
        ("alternator.place-unknown", "/vehicle/alternator/at", OneAmplifier() with
        {
            Vehicle = OneAmplifier().Vehicle with { Alternator = new Alternator { At = "bass" } },
        }),
        ("place.joins-nothing", "/runs/0/to", OneAmplifier().WithRun("main", run => run with { To = "bas" })),
        ("place.joins-nothing", "/junctions/0/id", OneAmplifier() with { Junctions = [new Junction { Id = "block" }] }),
        ("amplifier.no-supply", "/amplifiers/1", OneAmplifier() with
        {
            Amplifiers = [.. OneAmplifier().Amplifiers, OneAmplifier().Amplifiers[0] with { Id = "front" }],
        }),
        ("amplifier.no-return", "/amplifiers/0", OneAmplifier()
            .WithRun("return", run => run with { To = "post", Side = Side.Return })
            .With(
                Run("other", "post", "nowhere", 1, "4 AWG") with { Side = Side.Return },
                Run("more", "nowhere", "post", 1, "4 AWG") with { Side = Side.Return })),
        ("run.not-connected", "/runs/3", OneAmplifier()
            .With(
                Run("stray", "one", "two", 1, "4 AWG") with { Side = Side.Supply },
                Run("back", "two", "one", 1, "4 AWG") with { Side = Side.Supply })),
        ("battery.not-connected", "/vehicle/batteries/1", OneAmplifier() with
        {
            Vehicle =
                OneAmplifier().Vehicle with { Batteries = [.. OneAmplifier().Vehicle.Batteries, new Battery { Id = "rear" }] },
        }),
        ("run.side-contradicts", "/runs/1/side", OneAmplifier().WithRun("return", run => run with { Side = Side.Supply })),
        ("run.side-unclear", "/runs/3", OneAmplifier().With(Run("between", "bass", "starter", 1, "4 AWG"))
            .WithRun("between", run => run with { From = "starter", To = "post" }).With(Run("on", "bass", "post", 1, "4 AWG"))),
    ];

    public static TheoryData<int, string, string> Cases()
    {
        var cases = new TheoryData<int, string, string>();
        for (int i = 0; i < Faulty.Length; i++) cases.Add(i, Faulty[i].Code, Faulty[i].Pointer);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_fault_is_named_where_it_stands(int index, string code, string pointer)
    {
        IReadOnlyList<WrittenFault> faults = BuildFaultWriter.Find(Faulty[index].Build);
        Assert.True(
            faults.Any(fault => fault.Code == code && fault.Pointer == pointer),
            $"{code} at {pointer} is missing; there are "
            + $"{string.Join(", ", faults.Select(fault => fault.Code + " at " + fault.Pointer))}");
        Assert.All(
            faults, fault => Assert.All([fault.Detail, fault.Accepted], text => Assert.False(string.IsNullOrWhiteSpace(text))));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_build_with_a_fault_is_not_assessed(int index, string code, string pointer)
    {
        Assert.NotEmpty(code + pointer);
        Assert.Throws<ArgumentException>(() => Assessor.Assess(Faulty[index].Build, RulesetLibrary.Newest));
    }

    /// <summary>What parts, charges or stiffens, wrongly placed, each with a neighbour that is right.</summary>
    private static readonly (string Code, string Pointer, Build Faulty, Build Right)[] Pairs =
    [
        ("vehicle.two-chargers", "/vehicle/converter",
            Charged(OneAmplifier(), new Alternator { RatedAmps = 100 }, new Converter { RatedAmps = 100 }),
            Charged(OneAmplifier(), null, new Converter { RatedAmps = 100 })),
        ("alternator.place-unknown", "/vehicle/alternator/at",
            WithAlternatorCable(100, 2).WithRun("charge", run => run with { To = "post" })
                .With(Run("on", "post", "alternator", 1, "4 AWG") with { Side = Side.Supply }),
            WithAlternatorCable(100, 2).WithRun("charge", run => run with { To = "post" })
                .With(Run("on", "post", "starter", 1, "4 AWG"))),
        ("alternator.rating-unknown", "/vehicle/alternator",
            Charged(WithAlternatorCable(100, 2), new Alternator { At = "alternator" }, null),
            Charged(WithAlternatorCable(100, 2), new Alternator { At = "alternator", RatedAmps = 100 }, null)),
        ("capacitor.place-unknown", "/vehicle/capacitors/0/at", StiffenedAt("boot"), StiffenedAt("bass")),
        ("isolator.in-return", "/runs/3/isolator",
            Behind(null, 30).WithRun("front-strap", run => run with { Isolator = Relay() }), Behind(Relay(), 30)),
        ("isolator.bypassed", "/runs/0/isolator",
            Behind(Relay(), 30).With(
                Run("past", "starter", "rear", 2, "4 AWG") with { Side = Side.Supply, Fuse = Anl(100), FarFuse = Anl(100) }),
            Behind(Relay(), 30)),
        ("isolator.bypassed", "/runs/0/isolator", Joined(Charger(30), Relay()), Joined(Charger(30), Charger(20))),
        ("isolator.bypassed", "/runs/0/isolator", Joined(Charger(30), Diode()), Joined(Relay(), Diode())),
        ("isolator.ring", "/runs/6/isolator", Ring("third", "rear"), Ring("rear", "third")),
        ("isolator.no-battery", "/runs/1/isolator",
            Behind(Relay(), 30).WithRun("feed", run => run with { Isolator = Relay() }), Behind(Relay(), 30)),
        ("isolator.rating-missing", "/runs/0/isolator",
            Behind(new Isolator { Kind = IsolatorKind.DcDcCharger }, 30), Behind(Charger(30), 30)),
        ("isolator.points-back", "/runs/0/isolator", Turned(Diode()), Turned(Relay())),
        ("isolator.points-back", "/runs/0/isolator", Turned(Charger(30)), Behind(Charger(30), 30)),
    ];

    public static TheoryData<int, string> Neighbours()
    {
        var cases = new TheoryData<int, string>();
        for (int i = 0; i < Pairs.Length; i++) cases.Add(i, Pairs[i].Code);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Neighbours))]
    public void A_fault_is_the_only_one_and_its_neighbour_has_none(int index, string code)
    {
        WrittenFault fault = Assert.Single(BuildFaultWriter.Find(Pairs[index].Faulty));
        Assert.Equal((code, Pairs[index].Pointer), (fault.Code, fault.Pointer));
        Assert.All([fault.Detail, fault.Accepted], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.NotEmpty(Assessed.Of(Pairs[index].Right).Runs);
    }

    /// <summary>An id that says nothing is no reason to say nothing of the fault.</summary>
    [Fact]
    public void A_part_without_a_name_has_its_faults_named_too()
    {
        Build build = OneAmplifier().WithAmplifier(amplifier => amplifier with { Id = "" });
        Assert.Contains(BuildFaultWriter.Find(build), fault => fault.Code == "amplifier.no-supply");
    }

    [Fact]
    public void A_misspelt_place_brings_the_nearest_name() =>
        Assert.Contains(
            "\"bass\"",
            BuildFaultWriter.Find(OneAmplifier().WithRun("main", run => run with { To = "bas" }))[0].Detail,
            StringComparison.Ordinal);

    [Fact]
    public void All_faults_are_found_at_once()
    {
        Build build = OneAmplifier().WithAmplifier(amplifier => new Amplifier { Id = "starter" })
            .WithRun("strap", run => run with { To = "body" });
        string[] codes = [.. BuildFaultWriter.Find(build).Select(fault => fault.Code).Distinct()];
        Assert.Superset(
            new HashSet<string> { "id.taken", "amplifier.draw-unknown", "run.ends-equal" }, new HashSet<string>(codes));
    }

    private static Build Charged(Build build, Alternator? alternator, Converter? converter) => build with
    {
        Vehicle = build.Vehicle with { Alternator = alternator, Converter = converter },
    };

    private static Build StiffenedAt(string place) => OneAmplifier() with
    {
        Vehicle = OneAmplifier().Vehicle with { Capacitors = [new Capacitor { At = place, Farads = 1 }] },
    };

    /// <summary>The starter and the rear battery joined over two isolators side by side.</summary>
    private static Build Joined(Isolator one, Isolator other) => Behind(one, 30).With(
        Run("beside", "starter", "rear", 2, "4 AWG") with
        {
            Side = Side.Supply,
            Fuse = Anl(100),
            FarFuse = Anl(100),
            Isolator = other,
        });

    /// <summary>Three batteries with chargers from the first to the others, from the second to the third, and one more.</summary>
    private static Build Ring(string from, string to)
    {
        Build two = Behind(Charger(30), 30);
        Run link = two.Runs.Single(run => run.Id == "link");
        return (two with
        {
            Vehicle = two.Vehicle with { Batteries = [.. two.Vehicle.Batteries, two.Vehicle.Batteries[1] with { Id = "third" }] },
        }).With(
            link with { Id = "second", To = "third" },
            link with { Id = "onward", From = "rear", To = "third" },
            link with { Id = "closing", From = from, To = to });
    }

    /// <summary>The isolator on a run from the rear battery to the one that the alternator charges.</summary>
    private static Build Turned(Isolator isolator) =>
        Behind(isolator, 30).WithRun("link", run => run with { From = "rear", To = "starter" });
}
