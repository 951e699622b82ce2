using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Audits;

/// <summary>The measurements with their bounds: stated, or assumed and listed.</summary>
internal sealed class Bench
{
    private readonly AssumptionList assumptions;
    private readonly AuditSection usual;

    public Bench(BenchReport report, AssumptionList assumptions)
    {
        this.assumptions = assumptions;
        usual = assumptions.Ruleset.Audit;
        Lay = LayOf(report.Strands);
        if (report.Strands is { } strands)
        {
            StrandCount = strands.Count.Value == 1
                ? Interval.Exactly(1)
                : Bounded(strands.Count, Target.Of(Part.Strands, Member.CountUncertainty), usual.CountUncertainty, true);
            StrandMillimetres = Bounded(
                strands.DiameterMetres, Target.Of(Part.Strands, Member.DiameterUncertainty), usual.DiameterUncertainty, false)
                .Times(1000);
        }

        if (report.Resistance is { } resistance)
        {
            Ohms = Bounded(
                resistance.Ohms, Target.Of(Part.Resistance, Member.ResistanceUncertainty), usual.ResistanceUncertainty, true);
            ResistanceMetres = Bounded(
                resistance.LengthMetres, Target.Of(Part.Resistance, Member.LengthUncertainty), usual.LengthUncertainty, true);
            Celsius = CelsiusOf(resistance);
        }

        if (report.Mass is { } mass)
        {
            Kilograms = Bounded(
                mass.Kilograms, Target.Of(Part.Mass, Member.MassUncertainty), usual.MassUncertainty, true);
            MassMetres = Bounded(
                mass.LengthMetres, Target.Of(Part.Mass, Member.LengthUncertainty), usual.LengthUncertainty, true);
        }
    }

    /// <summary>How much longer the strands are than the cable.</summary>
    public Interval Lay { get; }

    public Interval? StrandCount { get; }

    public Interval StrandMillimetres { get; }

    public Interval? Ohms { get; }

    public Interval ResistanceMetres { get; }

    /// <summary>The temperature at which the resistance was measured: estimate and bounds, of any sign.</summary>
    public Interval Celsius { get; }

    public Interval? Kilograms { get; }

    public Interval MassMetres { get; }

    /// <summary>The area of the strands' sections together, in mm².</summary>
    public Interval? AreaByStrands => StrandCount is { } count
        ? (count * StrandMillimetres * StrandMillimetres).Times(Math.PI / 4)
        : null;

    /// <summary>Resistance of one metre of strand at 20 °C, had it the temperature coefficient of a metal.</summary>
    public Interval? OhmsPerMetreAt20(MaterialProperties metal) =>
        Ohms / (ResistanceMetres * Lay * TemperatureFactor(metal));

    /// <summary>Mass of one metre of strands.</summary>
    public Interval? KilogramsPerMetre => Kilograms / (MassMetres * Lay);

    private Interval TemperatureFactor(MaterialProperties metal) => new(
        metal.TemperatureFactor(Celsius.Estimate),
        metal.TemperatureFactor(Celsius.Least),
        metal.TemperatureFactor(Celsius.Most));

    private Interval LayOf(StrandMeasurement? strands)
    {
        if (strands?.Count.Value == 1) return Interval.Exactly(1);
        Figure tolerance = usual.LayTolerance;
        assumptions.Note(new AssumedFigure(
            AssumptionKind.LayFactor, Target.Of(Part.Bench, Member.LayFactor), tolerance.Value, tolerance.Unit, tolerance)
        {
            Around = Stranding.LayFactor,
        });
        return Interval.Within(Stranding.LayFactor, tolerance.Value);
    }

    private Interval CelsiusOf(ResistanceMeasurement measured)
    {
        bool isStated = measured.Celsius is not null;
        double celsius = assumptions.Take(
            measured.Celsius, AssumptionKind.BenchTemperature, Target.Of(Part.Resistance, Member.Temperature),
            usual.Temperature);
        double uncertainty = assumptions.Take(
            measured.CelsiusUncertainty,
            isStated ? AssumptionKind.TemperatureUncertainty : AssumptionKind.UnstatedTemperatureUncertainty,
            Target.Of(Part.Resistance, Member.TemperatureUncertainty),
            isStated ? usual.TemperatureUncertainty : usual.UnstatedTemperatureUncertainty);
        return new Interval(celsius, celsius - uncertainty, celsius + uncertainty);
    }

    private Interval Bounded(Reading reading, Target at, Figure figure, bool isRelative)
    {
        if ((reading.Uncertainty ?? reading.RelativeUncertainty * reading.Value) is { } stated)
            return Interval.Within(reading.Value, stated);
        double taken = assumptions.Take(null, AssumptionKind.Uncertainty, at, figure);
        return Interval.Within(reading.Value, isRelative ? taken * reading.Value : taken);
    }
}
