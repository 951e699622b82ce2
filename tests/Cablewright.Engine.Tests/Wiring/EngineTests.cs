using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Tests.Published.Ngspice;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>
/// The engine as a place: the alternator's case sits on it. Every ground here is 0.1 m of 1/0 with joints of 10 mΩ, so that its
/// resistance is 10.03 to 10.04 mΩ whatever its temperature, and three of them divide a current as equal resistances do. The
/// amplifier draws a constant current and returns it to the body; the alternator gives 0.8 of its rated current, hot (common
/// practice, no source). The source is Kirchhoff's laws, by hand.
/// </summary>
public class EngineTests
{
    private const double Equal = 2e-3;

    /// <summary>
    /// Cable b-e, strap e-f, pigtail b-f, each R; b is held at 0. At f 60 A come in, at e the alternator takes 100 A out:
    /// 60 R = 2 Vf - Ve and -100 R = 2 Ve - Vf, so Vf = 6.667 R and Ve = -46.667 R: strap 53.33 A, cable 46.67 A, pigtail 6.67 A.
    /// While the alternator rests, 60 A divide between R and 2 R: 40 A in the pigtail, 20 A in strap and cable.
    /// </summary>
    [Fact]
    public void Over_two_ways_its_current_divides_by_their_resistance()
    {
        Build build = Grounded(60, Cable, Strap, Pigtail).WithAlternator(125);
        Near.Relative(53.333, Peak(build, "engine-strap"), Equal, "engine strap, A");
        Near.Relative(46.667, Peak(build, "cable"), Equal, "negative cable, A");
        Near.Relative(40, Peak(build, "pigtail"), Equal, "pigtail, A");
    }

    /// <summary>
    /// As most cars are built, the strap carries what the amplifier takes. What is left goes over the cable into the battery: of
    /// 100 A 80 A; and all of 120 A comes back over it while the alternator rests.
    /// </summary>
    [Theory]
    [InlineData(20, 20, 80)]
    [InlineData(120, 120, 120)]
    public void With_the_battery_on_the_engine_alone_the_strap_carries_the_load(double drawn, double strap, double cable)
    {
        Build build = Grounded(drawn, Cable, Strap).WithAlternator(125);
        Near.Relative(strap, Peak(build, "engine-strap"), 1e-6, "engine strap, A");
        Near.Relative(cable, Peak(build, "cable"), 1e-6, "negative cable, A");
    }

    /// <summary>Then all that the alternator gives passes the strap, and the battery's own carries 60 A while it rests.</summary>
    [Fact]
    public void With_the_battery_on_the_body_alone_the_strap_carries_the_whole_charging_current()
    {
        Build build = Grounded(60, Strap, Pigtail).WithAlternator(125);
        Near.Relative(100, Peak(build, "engine-strap"), 1e-6, "engine strap, A");
        Near.Relative(60, Peak(build, "pigtail"), 1e-6, "the battery's strap, A");
    }

    /// <summary>Its own supply cable changes nothing of its way back, nor does a return that is stated.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_alternator_at_a_place_of_its_own_comes_back_over_the_engine_too(bool statesReturn)
    {
        Build build = PartedBuilds.WithAlternatorCable(100, 2);
        build = build with
        {
            Amplifiers = Grounded(60).Amplifiers,
            Runs = [.. Grounded(60, Cable, Strap, Pigtail).Runs, build.Runs.Single(run => run.Id == "charge")],
        };
        if (statesReturn) build = build.With(Ground("case", "alternator", "engine"));
        Near.Relative(53.333, Peak(build, "engine-strap"), Equal, "engine strap, A");
        Near.Relative(46.667, Peak(build, "cable"), Equal, "negative cable, A");
        if (statesReturn) Near.Relative(100, Peak(build, "case"), 1e-6, "from its case, A");
    }

    /// <summary>Of an alternator of unknown rating nothing is put in: 60 A divide between R and 2 R.</summary>
    [Fact]
    public void Of_an_unknown_alternator_the_battery_s_current_alone_divides()
    {
        Build build = Grounded(60, Cable, Strap, Pigtail);
        Near.Relative(20, Peak(build, "engine-strap"), Equal, "engine strap, A");
        Near.Relative(40, Peak(build, "pigtail"), Equal, "pigtail, A");
    }

    /// <summary>
    /// Source: ngspice (Debian), a netlist written by hand. The battery is held, an amplifier of 1250 W input returns to the body
    /// 1 mΩ from the foot, an alternator of 100 A hangs between the battery's positive post and the engine. The worst for the
    /// amplifier is the alternator at rest.
    /// </summary>
    [Fact]
    public void The_simulator_divides_it_alike()
    {
        Build build = OneAmplifier().WithAlternator(125);
        build = build with { Runs = [build.Runs[0], build.Runs[1], Cable, Strap, Pigtail] };
        Assessment answer = Assessed.Of(build);
        Dictionary<string, double> running = Simulator.Printed(Netlist(answer, 100));
        Near.Relative(Math.Abs(running["strap"]), Of(answer, "engine-strap").PeakCurrentAmps, 1e-3, "engine strap, A");
        Near.Relative(Math.Abs(running["cable"]), Of(answer, "cable").PeakCurrentAmps, 1e-3, "negative cable, A");
        Dictionary<string, double> resting = Simulator.Printed(Netlist(answer, 0));
        Near.Relative(Math.Abs(resting["pigtail"]), Of(answer, "pigtail").PeakCurrentAmps, 1e-3, "pigtail, A");
        Near.Relative(resting["across"], answer.Amplifiers[0].TerminalVolts, 1e-4, "at the amplifier, V");
    }

    /// <summary>
    /// A cable to the engine carries the starter and so wants 16 mm²; so does the engine's strap where the battery reaches the
    /// engine over the body alone. A strap beside the cable, or a pigtail from a battery that has one, may be thinner. Common
    /// practice, no source.
    /// </summary>
    [Fact]
    public void What_carries_the_starter_is_as_large_as_a_strap_has_to_be()
    {
        const string Code = "return.strap-too-small";
        Build overBody = Grounded(20, Strap, Pigtail).WithAlternator(60);
        Says("negative cable", Code, Grounded(20, Cable.Sized("6 AWG"), Strap));
        Says("from the engine to the body", Code, overBody.WithRun("engine-strap", run => run.Sized("6 AWG")));
        Says("from the battery to the body", Code, overBody.WithRun("pigtail", run => run.Sized("6 AWG")));
        Assert.DoesNotContain(Code, Codes(Grounded(20, Cable, Strap.Sized("6 AWG"), Pigtail.Sized("6 AWG"))));
    }

    /// <summary>
    /// A feed that touches the body comes back over the engine's strap and the battery's cable: 4 AWG in 80 °C bears
    /// 160 A · √(25/75) = 92.4 A, below the fuse of 150 A; 1/0 bears 285 A · √(25/75) = 164.5 A. A thin pigtail beside them is
    /// spared.
    /// </summary>
    [Fact]
    public void The_engine_s_strap_is_judged_behind_the_fuses_of_its_battery()
    {
        const string Code = "return.strap-below-fuse";
        Says("from the engine to the body", Code, Grounded(20, Cable, Strap.Sized("4 AWG")));
        Says("negative cable", Code, Grounded(20, Cable.Sized("4 AWG"), Strap));
        Assert.DoesNotContain(Code, Codes(Grounded(20, Cable, Strap)));
        Assert.DoesNotContain(Code, Codes(Grounded(20, Pigtail.Sized("4 AWG"), Cable, Strap)));
        Says("from battery", Code, Grounded(20, Strap, Pigtail.Sized("4 AWG")).WithAlternator(60));
    }

    /// <summary>
    /// A feed that touches the body finds cable and strap one behind the other: the fault current is that of one strap of twice
    /// their length and their joints.
    /// </summary>
    [Fact]
    public void A_short_circuit_comes_back_over_strap_and_cable()
    {
        Build one = Grounded(20, Pigtail with { JointOhms = 0.02, LengthMetres = 0.2 });
        Near.Relative(Fault(one), Fault(Grounded(20, Cable, Strap)), 1e-9, "smallest fault current, A");

        static double Fault(Build build) => Of(Assessed.Of(build), "main").Fuse!.SmallestFaultAmps!.Value;
    }

    /// <summary>A strap that is left open is chosen to bear what the alternator gives and the fuse lets through.</summary>
    [Fact]
    public void An_open_strap_and_an_open_cable_are_chosen_for_what_they_carry()
    {
        Assessment answer = Assessed.Of(
            Grounded(60, Cable with { Conductor = new() }, Strap with { Conductor = new() }).WithAlternator(125));
        foreach (RunResult chosen in new[] { Of(answer, "cable"), Of(answer, "engine-strap") })
        {
            Assert.Equal(Decided.Chosen, chosen.Conductor.Decided);
            Assert.True(chosen.AmpacityAmps > 130, $"{chosen.Conductor.Size} bears {chosen.AmpacityAmps} A");
        }

        Assert.DoesNotContain(answer.Findings, finding => finding.Code == "return.strap-below-fuse");
    }

    /// <summary>A pigtail beside them is chosen as straps are, though it carries little: 16 mm² or more.</summary>
    [Fact]
    public void An_open_pigtail_is_as_large_as_a_strap()
    {
        Build build = Grounded(20, Cable, Strap, Pigtail with { Conductor = new() }).WithAlternator(60);
        Assert.True(Of(Assessed.Of(build), "pigtail").Conductor.AreaMm2 >= 16);
    }

    /// <summary>The ruleset's 0.44 mΩ: 16 mm², 0.4 m.</summary>
    [Fact]
    public void A_strap_that_is_not_stated_is_the_engine_s_where_the_battery_is_tied_to_it()
    {
        Build build = Grounded(60, Cable);
        Assessment answer = Assessed.WithAdvice(build);
        Assumption strap = Assert.Single(answer.Assumptions, each => each.Value.StartsWith("a strap", StringComparison.Ordinal));
        Assert.Equal("a strap of 0.44 mohm from \"engine\" to \"body\"", strap.Value);
        Build stated = build.With(Strap with { JointOhms = 0.00044, LengthMetres = 0.001 });
        Near.Relative(
            Assessed.Of(stated).Amplifiers[0].TerminalVolts, answer.Amplifiers[0].TerminalVolts, 1e-5, "at the amplifier, V");
        Says("from the engine to the body", "return.strap-below-fuse", build);
    }

    /// <summary>Nothing is wrong with the golden case; a thin strap behind its fuse of 150 A would be.</summary>
    [Fact]
    public void The_size_of_the_engine_s_strap_is_asked_for()
    {
        Build build = OneAmplifier();
        build = build with { Runs = [build.Runs[0], build.Runs[1], Cable with { JointOhms = 0.0002 }] };
        FollowUp asked = Assert.Single(Assessed.WithAdvice(build).AskNext, question => question.Pointer == "/runs/-");
        Assert.Equal("Of what size is the strap from the engine to the body?", asked.Question);
    }

    /// <summary>Runs at the engine whose route is not stated lie beside it.</summary>
    [Fact]
    public void A_run_at_the_engine_lies_in_the_engine_bay()
    {
        Build build = Grounded(20, Cable, Strap with { Route = null });
        Assert.Equal(Route.EngineBay, Of(Assessed.Of(build), "engine-strap").Route);
    }

    /// <summary>The vehicle's own cables beside the engine pass no wall, want no loom and are not bought.</summary>
    [Fact]
    public void What_joins_the_engine_is_no_part_of_the_job()
    {
        BillOfMaterials with = Of(Grounded(20, Cable, Strap, Pigtail)), without = Of(Grounded(20, Pigtail));
        Assert.Equal(["main"], with.Grommets.Select(run => run.Run.Id));
        Assert.Equal(
            (without.LoomMetres, without.RingTerminals, without.Ties), (with.LoomMetres, with.RingTerminals, with.Ties));

        static BillOfMaterials Of(Build build) =>
            new(Variant.Of(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)));
    }

    private static Run Cable => Ground("cable", "starter", "engine");

    private static Run Strap => Ground("engine-strap", "engine", "body");

    private static Run Pigtail => Ground("pigtail", "starter", "body");

    private static Run Ground(string id, string from, string to) =>
        Run(id, from, to, 0.1, "1/0 AWG") with { Route = Route.EngineBay, JointOhms = 0.01, Side = Side.Return };

    /// <summary>An amplifier of exactly these amperes behind a fuse of 150 A that returns to the body, and the grounds.</summary>
    private static Build Grounded(double amps, params Run[] grounds) => OneAmplifier() with
    {
        Amplifiers = [new Amplifier { Id = "bass", OnBoardFuseAmps = amps }],
        Runs = [OneAmplifier().Runs[0], OneAmplifier().Runs[1], .. grounds],
    };

    private static string Netlist(Assessment answer, double alternatorAmps)
    {
        string R(string name, string from, string to) =>
            FormattableString.Invariant($"R{name} {from} {to} {Of(answer, name).ResistanceMilliohms / 1000:R}");
        return string.Join('\n',
            "* engine", "Vcharging plus 0 14", R("main", "plus", "amp"), R("return", "ampback", "body"), "Rbody body foot 0.001",
            R("cable", "0", "engine"), R("engine-strap", "engine", "foot"), R("pigtail", "0", "foot"),
            "Bbass amp ampback I=1250/V(amp,ampback)",
            FormattableString.Invariant($"Ialternator engine plus {alternatorAmps:R}"),
            ".nodeset v(amp)=14", ".options reltol=1e-9", ".control", "set numdgt=12", "op",
            Line("strap", "(v(foot)-v(engine))", "engine-strap"), Line("cable", "v(engine)", "cable"),
            Line("pigtail", "v(foot)", "pigtail"), "let across = v(amp)-v(ampback)", "print across", "quit 0", ".endc", ".end",
            "");

        string Line(string name, string volts, string run) => FormattableString.Invariant(
            $"let {name} = {volts}/{Of(answer, run).ResistanceMilliohms / 1000:R}\nprint {name}");
    }

    private static RunResult Of(Assessment answer, string id) => answer.Runs.Single(run => run.Id == id);

    private static double Peak(Build build, string id) => Of(Assessed.Of(build), id).PeakCurrentAmps;

    private static string[] Codes(Build build) => [.. Assessed.Of(build).Findings.Select(finding => finding.Code)];

    private static void Says(string words, string code, Build build) => Assert.Contains(
        words, Assert.Single(Assessed.Of(build).Findings, finding => finding.Code == code).Message, StringComparison.Ordinal);
}
