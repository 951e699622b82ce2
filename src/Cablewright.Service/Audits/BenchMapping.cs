using Cablewright.Contract.Quantities;
using Cablewright.Engine.Audits;
using Cablewright.Service.Quantities;
using BenchReport = Cablewright.Contract.Audits.BenchReport;
using MassMeasurement = Cablewright.Contract.Audits.MassMeasurement;
using ResistanceMeasurement = Cablewright.Contract.Audits.ResistanceMeasurement;
using StrandMeasurement = Cablewright.Contract.Audits.StrandMeasurement;

namespace Cablewright.Service.Audits;

/// <summary>From the contract's measurements to the engine's.</summary>
internal static class BenchMapping
{
    /// <summary>The same measurements in SI units.</summary>
    public static Engine.Audits.BenchReport ToEngine(BenchReport report) => new()
    {
        Units = (report.Units ?? default),
        Strands = report.Strands is null ? null : StrandsOf(report.Strands),
        Resistance = report.Resistance is null ? null : ResistanceOf(report.Resistance),
        Mass = report.Mass is null ? null : MassOf(report.Mass),
        ClaimedSize = StatedSize.Of(report.Claim?.Size),
        ClaimedMaterial = report.Claim?.Material,
        InsulationCelsius = Stated<BenchReport>.Value(report.InsulationRating, nameof(report.InsulationRating)),
    };

    private static Engine.Audits.StrandMeasurement StrandsOf(StrandMeasurement strands) => new(
        new Reading(
            strands.Count,
            null,
            Stated<StrandMeasurement>.Value(strands.CountUncertainty, nameof(strands.CountUncertainty))),
        ReadingOf<StrandMeasurement>(
            strands.Diameter, nameof(strands.Diameter), strands.DiameterUncertainty, nameof(strands.DiameterUncertainty)));

    private static Engine.Audits.ResistanceMeasurement ResistanceOf(ResistanceMeasurement measured) => new(
        ReadingOf<ResistanceMeasurement>(
            measured.Resistance,
            nameof(measured.Resistance),
            measured.ResistanceUncertainty,
            nameof(measured.ResistanceUncertainty)),
        ReadingOf<ResistanceMeasurement>(
            measured.Length, nameof(measured.Length), measured.LengthUncertainty, nameof(measured.LengthUncertainty)),
        Stated<ResistanceMeasurement>.Value(measured.Temperature, nameof(measured.Temperature)),
        Stated<ResistanceMeasurement>.Value(measured.TemperatureUncertainty, nameof(measured.TemperatureUncertainty)));

    private static Engine.Audits.MassMeasurement MassOf(MassMeasurement measured) => new(
        ReadingOf<MassMeasurement>(
            measured.Mass, nameof(measured.Mass), measured.MassUncertainty, nameof(measured.MassUncertainty)),
        ReadingOf<MassMeasurement>(
            measured.Length, nameof(measured.Length), measured.LengthUncertainty, nameof(measured.LengthUncertainty)));

    private static Reading ReadingOf<T>(string text, string member, string? uncertainty, string uncertaintyMember)
    {
        double value = Stated<T>.Read(text, member).Value;
        if (uncertainty is null) return new Reading(value);
        QuantityReading reading = Stated<T>.Read(uncertainty, uncertaintyMember);
        return reading.Kind is QuantityKind.Ratio
            ? new Reading(value, null, reading.Value)
            : new Reading(value, reading.Value);
    }
}
