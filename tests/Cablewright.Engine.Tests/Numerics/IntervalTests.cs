using Cablewright.Engine.Audits;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Tests.Audits;
using Cablewright.Vocabulary;
using CsCheck;
using ConductorAudit = Cablewright.Contract.Audits.ConductorAudit;
using MetalCandidate = Cablewright.Contract.Audits.MetalCandidate;
using Bounds = Cablewright.Contract.Audits.Bounds;

namespace Cablewright.Engine.Tests.Numerics;

/// <summary>
/// Measurements made from a cable that is known, each off by no more than its uncertainty: the answer must hold it.
/// </summary>
public class IntervalTests
{
    private const int Cables = 2000;

    private static readonly Gen<Cable> AnyCable = Gen.Select(
        Gen.Enum<Material>(), Gen.Double[0.4, 100], Gen.Double[1.0, 1.04], Gen.Double[-10, 45],
        (metal, area, lay, celsius) => new Cable(metal, area, lay, celsius));

    private static readonly Gen<double[]> Errors = Gen.Double[-1, 1].Array[7];

    private static readonly Gen<double> Share = Gen.Double[0.0001, 0.05];

    [Fact]
    public void Every_interval_holds_the_truth_when_each_reading_is_within_its_uncertainty() =>
        Gen.Select(AnyCable, Errors, Share).Sample((cable, errors, share) =>
        {
            ConductorAudit audit = OnTheBench.Audit(cable.Measured(errors, share) with { ClaimedMaterial = cable.Metal });
            MetalCandidate own = audit.Metals.Single(metal => metal.Material == cable.Metal);
            Assert.True(own.Possible, $"{cable} is not held possible");
            Assert.Equal(cable.Metal, audit.Material);
            Assert.All(audit.Areas, way => AssertHolds(way.AreaMm2, cable.AreaMm2, way.Way.ToString()));
            AssertHolds(audit.AreaMm2, cable.AreaMm2, "all ways");
            MaterialProperties metal = MaterialProperties.Of(cable.Metal);
            AssertHolds(audit.DensityGramsPerCm3!, metal.DensityKilogramsPerCubicMetre / 1000, "density");
            AssertHolds(
                audit.ConductivityPercentIacs!, 100.0 / 58 / metal.ResistivityOhmMm2PerMetre, "conductivity, % IACS");
            AssertHolds(
                audit.MassResistivityOhmGramsPerM2!,
                metal.ResistivityOhmMm2PerMetre * metal.DensityKilogramsPerCubicMetre / 1000,
                "mass resistivity");
        }, iter: Cables);

    /// <summary>Twice the length has twice the resistance and twice the mass, and is the same cable.</summary>
    [Fact]
    public void The_length_measured_changes_nothing() =>
        Gen.Select(AnyCable, Errors, Gen.Double[0.1, 10]).Sample((cable, errors, factor) =>
        {
            ConductorAudit one = OnTheBench.Audit(cable.Measured(errors, 0.01));
            ConductorAudit other = OnTheBench.Audit(cable.Measured(errors, 0.01, factor));
            Assert.Equal(one.AreaMm2.Estimate, other.AreaMm2.Estimate, one.AreaMm2.Estimate * 1e-9);
            Assert.Equal(one.AreaMm2.Least, other.AreaMm2.Least, one.AreaMm2.Estimate * 1e-9);
        }, iter: 200);

    [Fact]
    public void A_duller_measurement_never_narrows_the_interval() =>
        Gen.Select(AnyCable, Errors, Share, Gen.Double[1, 3]).Sample((cable, errors, share, factor) =>
        {
            ConductorAudit sharp = OnTheBench.Audit(cable.Measured(errors, share) with { ClaimedMaterial = cable.Metal });
            BenchReport same = cable.Measured(errors, share);
            ConductorAudit dull = OnTheBench.Audit(Duller(same, factor) with { ClaimedMaterial = cable.Metal });
            Assert.True(dull.AreaMm2.Least <= sharp.AreaMm2.Least && dull.AreaMm2.Most >= sharp.AreaMm2.Most);
        }, iter: 500);

    private static BenchReport Duller(BenchReport report, double factor) => report with
    {
        Strands = report.Strands! with { DiameterMetres = Duller(report.Strands.DiameterMetres, factor) },
        Resistance = report.Resistance! with { Ohms = Duller(report.Resistance.Ohms, factor) },
        Mass = report.Mass! with { Kilograms = Duller(report.Mass.Kilograms, factor) },
    };

    private static Reading Duller(Reading reading, double factor) => reading with { Uncertainty = reading.Uncertainty * factor };

    private static void AssertHolds(Bounds interval, double truth, string what) => Assert.True(
        interval.Least <= truth * (1 + 1e-12) && interval.Most >= truth * (1 - 1e-12),
        $"{what}: {truth:R} is not within {interval}");

    /// <summary>A cable as it truly is.</summary>
    private sealed record Cable(Material Metal, double AreaMm2, double Lay, double Celsius)
    {
        private const int StrandCount = 100;

        private MaterialProperties Properties => MaterialProperties.Of(Metal);

        /// <summary>Readings off by <paramref name="errors"/> (−1 to 1) times their uncertainty.</summary>
        public BenchReport Measured(double[] errors, double share, double metres = 1)
        {
            double diameter = Math.Sqrt(AreaMm2 / StrandCount * 4 / Math.PI) / 1000;
            double ohms = Properties.ResistivityOhmMm2PerMetre * Lay * metres / AreaMm2 * Properties.TemperatureFactor(Celsius);
            double kilograms = Properties.DensityKilogramsPerCubicMetre * AreaMm2 * 1e-6 * Lay * metres;
            return new BenchReport
            {
                Strands = new StrandMeasurement(new Reading(StrandCount, 0), Read(diameter, 0)),
                Resistance = new ResistanceMeasurement(Read(ohms, 1), Read(metres, 2), Celsius + errors[3] * 3, 3),
                Mass = new MassMeasurement(Read(kilograms, 4), Read(metres, 5)),
            };

            Reading Read(double truth, int error) => new(truth * (1 + errors[error] * share), truth * share);
        }
    }
}
