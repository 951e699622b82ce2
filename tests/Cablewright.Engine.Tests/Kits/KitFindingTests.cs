using Cablewright.Contract.Assessments;
using Cablewright.Contract.Kits;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.Kits.SampleKits;
using Kit = Cablewright.Engine.Kits.Kit;

namespace Cablewright.Engine.Tests.Kits;

/// <summary>Each finding of a kit on one side of its limit and not on the other; limits worked out by hand.</summary>
public class KitFindingTests
{
    public static TheoryData<string> Codes => [.. KitCodes.All.Select(code => code.Code)];

    private static (Kit Kit, Build Build) Must(string code) => code switch
    {
        "kit.part-missing" => (Full().Without(KitPartKind.Grommet), JobThroughBulkhead()),
        // 5 m must be reached; 5.5 m with the allowance of a tenth.
        "kit.part-short" => (Full().With(KitPartKind.PowerWire, wire => wire with { LengthMetres = 4.99 }), Job()),
        "kit.cut-tight" => (Full().With(KitPartKind.PowerWire, wire => wire with { LengthMetres = 5.49 }), Job()),
        // 46 A on 16 AWG (25 A at 30 C, 33 CFR 183.425 table 5) is over its ampacity.
        "kit.wire-thin" => (Sized("16 AWG"), Job()),
        // 750 W at 13.02 V are 57.6 A; 8 AWG has 2.513 mohm/m at 69.7 C: 0.81 V over 5.6 m, 5.8 % of 14 V.
        "kit.wire-marginal" => (Sized("8 AWG"), Job(600)),
        // 46 A through a fuse of 40 A.
        "kit.fuse-wrong" => (Full().With(KitPartKind.Fuse, fuse => fuse with { RatingAmps = 40 }), Job()),
        // 4 AWG asks for 20.7276 mm2: 1832 strands of 0.12 mm are 20.72, 1833 are 20.731.
        "kit.wire-below-label" => (Stranded(1832), Job()),
        // 390 W of class AB at 60 % are 50 A, in class D at 75 % 40 A; 12 AWG of 90 C in an engine bay of 60 C carries
        // 45 A (33 CFR 183.425 table 5) x sqrt(30 / 60), and a half more where it is cool and rated higher.
        "kit.serves-if" => (Sized("12 AWG"), Bare(390, 1.5)),
        // An amplifier below 500 W usually accepts 4 AWG (common practice, no source).
        "kit.wire-thick" => (Sized("1/0 AWG"), Bare(300)),
        "kit.same-colour" => (Full().With(KitPartKind.GroundWire, wire => wire with { Colour = "Red" }), Job()),
        "kit.sundries-missing" => (Full().Without(KitPartKind.Ties), Job()),
        "kit.build-fails-anyway" => (Full(), Job() with { Limits = Job().Limits with { MaxDropVolts = 0.01 } }),
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "no pair"),
    };

    private static (Kit Kit, Build Build) MustNot(string code) => code switch
    {
        "kit.part-missing" => (Full(), JobThroughBulkhead()),
        "kit.part-short" => (Full().With(KitPartKind.PowerWire, wire => wire with { LengthMetres = 5.01 }), Job()),
        "kit.cut-tight" => (Full().With(KitPartKind.PowerWire, wire => wire with { LengthMetres = 5.51 }), Job()),
        "kit.wire-below-label" => (Stranded(1833), Job()),
        "kit.serves-if" => (Sized("12 AWG"), Bare(1500, 1.5)),
        _ => (Full(), Job()),
    };

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_finding_stands_on_one_side_of_its_limit_and_not_on_the_other(string code)
    {
        (Kit kit, Build build) = Must(code);
        KitAnswer check = kit.Check(build);
        Assert.True(check.Codes().Contains(code), $"{code} is missing among {string.Join(", ", check.Codes())}");
        Finding found = check.Findings.First(finding => finding.Code == code);
        Assert.All(
            [found.Message, found.Rule, found.Source, found.Remedy, found.Workings],
            text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.StartsWith(code == "kit.build-fails-anyway" ? "/build" : "/kit", found.Pointer, StringComparison.Ordinal);
        Assert.Equal(found.Measured is null, found.Unit is null);
        Assert.Contains(RulesetLibrary.Newest.Figures, figure => figure.Id == found.Rule);
        (Kit other, Build otherBuild) = MustNot(code);
        Assert.DoesNotContain(code, other.Check(otherBuild).Codes());
    }

    [Fact]
    public void A_kit_that_holds_all_serves_and_nothing_is_found()
    {
        KitAnswer check = Full().Check(JobThroughBulkhead());
        Assert.Equal(KitVerdict.Serves, check.Verdict);
        Assert.DoesNotContain(check.Findings, finding => finding.Severity is Severity.Fail);
        Assert.NotNull(check.Trial);
    }

    [Theory]
    [InlineData(KitPartKind.PowerWire, KitVerdict.DoesNotServe)]
    [InlineData(KitPartKind.GroundWire, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.Fuse, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.RingTerminal, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.Grommet, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.Loom, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.TurnOnLead, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.SignalInterconnect, KitVerdict.ServesWithChange)]
    [InlineData(KitPartKind.HeatShrink, KitVerdict.Serves)]
    [InlineData(KitPartKind.Ties, KitVerdict.Serves)]
    public void A_missing_part_is_noticed(KitPartKind missing, KitVerdict verdict)
    {
        KitAnswer check = Full().Without(missing).Check(JobThroughBulkhead());
        Assert.Equal(verdict, check.Verdict);
        Assert.NotEmpty(check.Findings);
    }

    /// <summary>Copper-clad aluminium of a size conducts about 64 % as well as copper: the same label, another answer.</summary>
    [Fact]
    public void A_cable_is_tried_in_its_own_metal()
    {
        Build job = Job(900);
        KitAnswer copper = Full().With(KitPartKind.Fuse, fuse => fuse with { RatingAmps = 100 }).Check(job);
        KitAnswer clad = Full().With(KitPartKind.Fuse, fuse => fuse with { RatingAmps = 100 })
            .With(KitPartKind.PowerWire, wire => wire with { Material = Material.CopperCladAluminium }).Check(job);
        double Ohms(KitAnswer check) => check.Trial!.Runs.First(run => run.Id == "main").ResistanceMilliohms;
        Assert.True(Ohms(clad) > Ohms(copper));
        Assert.True(clad.Verdict >= copper.Verdict);
    }

    /// <summary>1568 strands of 0.12 mm are 17.7 mm²: between 6 (13.3) and 4 AWG, so tried as 5 AWG (16.8 mm²).</summary>
    [Fact]
    public void A_cable_below_its_label_is_tried_at_its_true_size()
    {
        KitAnswer check = Stranded(1568).Check(Job());
        Assert.Equal("5 AWG", check.Trial!.Runs.First(run => run.Id == "main").Conductor.Size);
    }

    [Fact]
    public void What_is_assumed_of_a_kit_is_listed()
    {
        KitAnswer check = Full().With(KitPartKind.PowerWire, wire => wire with { Material = null }).Check(Job());
        Assert.Equal("/kit/parts/0/material", Assert.Single(check.Assumptions).Pointer);
    }

    private static Kit Stranded(int strands) =>
        Full().With(KitPartKind.PowerWire, wire => wire with { StrandCount = strands, StrandMetres = 0.00012 });
}
