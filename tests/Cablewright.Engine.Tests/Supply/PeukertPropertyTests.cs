using Cablewright.Engine.Builds;
using Cablewright.Engine.Sources;
using Cablewright.Engine.Tests.Published;
using CsCheck;

namespace Cablewright.Engine.Tests.Supply;

/// <summary>What must hold of batteries side by side, and of an alternator's curve.</summary>
public class PeukertPropertyTests
{
    private static readonly Gen<Peukert.Cell> AnyCell = Gen.Select(
        Gen.Double[1, 200], Gen.OneOfConst(1.0, 5, 10, 20), Gen.Double[1, 1.6], Gen.Double[0.05, 1],
        (ampHours, hours, exponent, share) => new Peukert.Cell(ampHours, hours, exponent, share));

    [Fact]
    public void One_battery_lasts_as_Peukert_s_law_says_by_hand() =>
        Gen.Select(AnyCell, Gen.Double[0.1, 400]).Sample((cell, amps) => Near.Relative(
            cell.Share * cell.RatingHours * Math.Pow(cell.AmpHours / (cell.RatingHours * amps), cell.Exponent),
            Peukert.Hours([cell], amps), 1e-9, "h"));

    /// <summary>With a like exponent and rating they are one battery of their capacities together.</summary>
    [Fact]
    public void Like_batteries_last_as_one_of_their_capacities_together() =>
        Gen.Select(AnyCell, Gen.Double[0.1, 5], Gen.Double[0.1, 400]).Sample((cell, factor, amps) => Near.Relative(
            Peukert.Hours([cell with { AmpHours = (1 + factor) * cell.AmpHours }], amps),
            Peukert.Hours([cell, cell with { AmpHours = factor * cell.AmpHours }], amps), 1e-9, "h"));

    [Fact]
    public void A_further_battery_never_shortens_the_time_under_a_current() =>
        Gen.Select(AnyCell.Array[1, 4], AnyCell, Gen.Double[0.1, 400]).Sample((cells, further, amps) =>
            Assert.True(Peukert.Hours([.. cells, further], amps) >= Peukert.Hours(cells, amps) * (1 - 1e-9)));

    /// <summary>Never by being empty either: no ampere-hour may be drawn from it.</summary>
    [Fact]
    public void An_empty_battery_changes_nothing() =>
        Gen.Select(AnyCell.Array[1, 4], AnyCell, Gen.Double[0.1, 400]).Sample((cells, further, amps) =>
            Assert.Equal(Peukert.Hours(cells, amps), Peukert.Hours([.. cells, further with { Share = 0 }], amps)));

    [Fact]
    public void The_missing_ampere_hours_give_exactly_the_time_that_is_wished() =>
        Gen.Select(AnyCell.Array[1, 3], AnyCell, Gen.Double[1, 400], Gen.Double[0.1, 10]).Sample((cells, like, amps, hours) =>
        {
            double missing = Peukert.MissingAmpHours(cells, like, amps, hours);
            double reached = Peukert.Hours([.. cells, like with { AmpHours = missing }], amps);
            if (missing > 0) Near.Relative(hours, reached, 1e-9, "h");
            else Assert.True(reached >= hours * (1 - 1e-9));
        });

    [Fact]
    public void An_alternator_s_curve_never_falls_with_speed() =>
        Gen.Select(Gen.Double[500, 3000], Gen.Double[1, 300], Gen.Double[1.01, 5], Gen.Double[0.5, 3],
            Gen.Double[100, 20_000].Array[2])
            .Sample((rpm, amps, faster, share, speeds) =>
            {
                OutputPoint[] points = [new OutputPoint(rpm, amps), new OutputPoint(faster * rpm, share * amps)];
                foreach (AlternatorCurve curve in new[] { AlternatorCurve.Through(points[0], points[1]),
                    AlternatorCurve.Nearest(points) })
                {
                    Assert.True(double.IsFinite(curve.LimitAmps) && curve.LimitAmps > 0, curve.ToString());
                    Assert.True(curve.AmpsAt(speeds.Max()) >= curve.AmpsAt(speeds.Min()), curve.ToString());
                }
            });
}
