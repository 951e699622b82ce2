using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.PartedBuilds;
using static Cablewright.Engine.Tests.Protection.Drawn;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Protection;

/// <summary>
/// Source: ABYC E-11.16 Table V.A, interrupting rating by the cold-cranking current of all batteries together: up to 650 A 1500 A
/// for the battery fuse and 750 A behind it, to 1100 A 3000 and 1500 A, above 5000 and 2500 A; a later edition (11.10.1.2.3)
/// takes the table to 2200 A, beyond which the batteries' own short-circuit current counts, here 20 kA.
/// </summary>
public class RequiredInterruptingTests
{
    private const double Bolted = 20_000;

    [Theory]
    [InlineData(100, 1500, 750)]
    [InlineData(650, 1500, 750)]
    [InlineData(651, 3000, 1500)]
    [InlineData(1100, 3000, 1500)]
    [InlineData(1101, 5000, 2500)]
    [InlineData(2200, 5000, 2500)]
    [InlineData(2201, Bolted, Bolted)]
    public void It_follows_from_the_cranking_current(double cranking, double atBattery, double behind)
    {
        BuildModel model = Behind(cranking);
        Assert.Equal((atBattery, behind), (Needed(model, RunEnd.Near(0)), Needed(model, RunEnd.Near(1))));
    }

    /// <summary>No fuse has to interrupt more than can flow where it stands.</summary>
    [Theory]
    [InlineData(1499, 1499)]
    [InlineData(1501, 1500)]
    public void It_is_no_more_than_the_bolted_current(double bolted, double needed) =>
        Assert.Equal(needed, RequiredInterrupting.Of(Behind(650), RunEnd.Near(0), bolted));

    /// <summary>Unstated, 9 A for each ampere-hour (540 A of 60 Ah): 72 Ah are 648 A, 73 Ah 657 A.</summary>
    [Theory]
    [InlineData(72, 1500)]
    [InlineData(73, 3000)]
    public void An_unstated_cranking_current_follows_from_the_capacity(double ampHours, double needed)
    {
        Build build = Of(Fused("main", "starter", "bass"))
            .WithBattery("starter", battery => battery with { CapacityAmpHours = ampHours });
        Assert.Equal(needed, Needed(ModelOf(build), RunEnd.Near(0)));
    }

    /// <summary>500 A and 700 A are 1200 A together; a charger lets neither fault the other's side.</summary>
    [Theory]
    [InlineData(null, 5000, 5000)]
    [InlineData(IsolatorKind.Relay, 5000, 5000)]
    [InlineData(IsolatorKind.Diode, 5000, 5000)]
    [InlineData(IsolatorKind.DcDcCharger, 1500, 3000)]
    public void Batteries_count_together_but_not_over_a_charger(IsolatorKind? between, double front, double rear)
    {
        BuildModel model = Tied(between, Chemistry.Agm);
        Assert.Equal((front, rear), (Needed(model, RunEnd.Near(0)), Needed(model, RunEnd.Far(0))));
    }

    /// <summary>The table does not speak of lithium iron phosphate, whatever cranking current is stated of it.</summary>
    [Theory]
    [InlineData(null, Bolted)]
    [InlineData(IsolatorKind.Relay, Bolted)]
    [InlineData(IsolatorKind.DcDcCharger, 1500)]
    public void Beside_lithium_the_bolted_current_counts(IsolatorKind? between, double front)
    {
        BuildModel model = Tied(between, Chemistry.LiFePo4);
        Assert.Equal((front, Bolted), (Needed(model, RunEnd.Near(0)), Needed(model, RunEnd.Far(0))));
    }

    /// <summary>Plug-in fuses break 1000 A (ISO 8820-3), and vehicle makers fit them at batteries of up to 650 A.</summary>
    [Theory]
    [InlineData(FuseFamilyName.BladeC, null, 650, true)]
    [InlineData(FuseFamilyName.BladeE, null, 650, true)]
    [InlineData(FuseFamilyName.BladeE, null, 651, false)]
    [InlineData(FuseFamilyName.BladeE, 1000.0, 650, true)]
    [InlineData(FuseFamilyName.BladeE, 999.0, 650, false)]
    [InlineData(FuseFamilyName.Anl, 1000.0, 650, false)]
    public void A_plug_in_fuse_is_usual_at_a_small_battery(FuseFamilyName family, double? own, double cranking, bool isUsual)
    {
        FuseWish wish = new() { RatingAmps = 40, Family = family, InterruptingRatingAmps = own };
        Assert.Equal(isUsual, IsUsual(Of(Wire("main", "starter", "bass") with { Fuse = wish }), cranking));
    }

    [Fact]
    public void Behind_lithium_no_plug_in_fuse_is_usual()
    {
        Build build = Of(Wire("main", "starter", "bass") with { Fuse = Blade(40) });
        Assert.True(IsUsual(build, 300));
        Assert.False(IsUsual(build.WithBattery("starter", battery => battery with { Chemistry = Chemistry.LiFePo4 }), 300));
    }

    /// <summary>
    /// A blade breaks 1000 A. The table asks 1500 A of a battery of 650 A; 3000 A of one of 651 A, more than the 2520 A that 5 mΩ
    /// let flow at 12.6 V.
    /// </summary>
    [Theory]
    [InlineData(650, Severity.Info, 1500)]
    [InlineData(651, Severity.Caution, 2520)]
    public void A_usual_plug_in_fuse_is_no_more_than_worth_knowing(double cranking, Severity severity, double needed)
    {
        FuseWish wish = Blade(70) with { InterruptingRatingAmps = null };
        Finding finding = Assert.Single(
            Assessed.Of(Cranking(Proved().WithRun("main", run => run with { Fuse = wish }), cranking)).Findings,
            each => each.Code == "fuse.interrupting-rating-unknown");
        Assert.Equal((severity, needed, 1000.0), (finding.Severity, finding.Measured!.Value, finding.Limit!.Value));
    }

    private static double Needed(BuildModel model, RunEnd end) => RequiredInterrupting.Of(model, end, Bolted);

    private static bool IsUsual(Build build, double cranking)
    {
        BuildModel model = ModelOf(Cranking(build, cranking));
        FittedFuse fuse = DesignOf(model).FuseAt(RunEnd.Near(0))!;
        return RequiredInterrupting.IsUsualPlugIn(model, RunEnd.Near(0), fuse.Family, fuse.InterruptsAmps);
    }

    /// <summary>A fuse at the battery and one behind it.</summary>
    private static BuildModel Behind(double cranking) =>
        ModelOf(Cranking(Of(Fused("main", "starter", "block"), Fused("feed", "block", "bass")), cranking));

    /// <summary>A starter battery of 500 A and a rear one of 700 A, a fuse at each end of the run between.</summary>
    private static BuildModel Tied(IsolatorKind? between, Chemistry rearChemistry)
    {
        Run tie = Fused("tie", "starter", "rear") with { FarFuse = Anl(100), Isolator = IsolatorOf(between) };
        return ModelOf(Of(tie, Fused("feed", "rear", "bass"))
            .WithBattery("starter", battery => battery with { ColdCrankingAmps = 500 })
            .WithBattery("rear", battery => battery with { ColdCrankingAmps = 700, Chemistry = rearChemistry }));
    }

    private static Isolator? IsolatorOf(IsolatorKind? kind) => kind switch
    {
        IsolatorKind.Relay => Relay(),
        IsolatorKind.Diode => Diode(),
        IsolatorKind.DcDcCharger => Charger(20),
        _ => null,
    };

    private static Build Cranking(Build build, double amps) =>
        build.WithBattery("starter", battery => battery with { ColdCrankingAmps = amps });
}
