using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
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
        IReadOnlyList<BuildFault> faults = Assessor.FindFaults(Faulty[index].Build);
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

    [Fact]
    public void A_misspelt_place_brings_the_nearest_name() =>
        Assert.Contains(
            "\"bass\"",
            Assessor.FindFaults(OneAmplifier().WithRun("main", run => run with { To = "bas" }))[0].Detail,
            StringComparison.Ordinal);

    [Fact]
    public void All_faults_are_found_at_once()
    {
        Build build = OneAmplifier().WithAmplifier(amplifier => new Amplifier { Id = "starter" })
            .WithRun("strap", run => run with { To = "body" });
        string[] codes = [.. Assessor.FindFaults(build).Select(fault => fault.Code).Distinct()];
        Assert.Superset(
            new HashSet<string> { "id.taken", "amplifier.draw-unknown", "run.ends-equal" }, new HashSet<string>(codes));
    }
}
