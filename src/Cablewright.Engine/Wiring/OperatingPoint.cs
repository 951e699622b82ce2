namespace Cablewright.Engine.Wiring;

/// <summary>Voltages, currents and temperatures of a build in one case, once they agree with each other.</summary>
/// <param name="Case">The case.</param>
/// <param name="PeakAmps">Current of each run with every amplifier at full output, from its start to its end.</param>
/// <param name="ThermalAmps">Root-mean-square current of each run.</param>
/// <param name="Celsius">Temperature of each run's conductor.</param>
/// <param name="Ohms">Resistance of each run at that temperature, fuses and joints included.</param>
/// <param name="LoadVolts">Voltage at each amplifier at full output.</param>
/// <param name="LoadAmps">Current of each amplifier at full output.</param>
/// <param name="ThermalLoadAmps">Root-mean-square current of each amplifier.</param>
/// <param name="BodyVolts">Voltage between the body and the charging battery's negative terminal at full output; 0 where nothing
/// returns over the body.</param>
/// <param name="StrapAmps">Root-mean-square current of each assumed strap.</param>
internal sealed record OperatingPoint(
    OperatingCase Case,
    double[] PeakAmps,
    double[] ThermalAmps,
    double[] Celsius,
    double[] Ohms,
    double[] LoadVolts,
    double[] LoadAmps,
    double[] ThermalLoadAmps,
    double BodyVolts,
    double[] StrapAmps);
