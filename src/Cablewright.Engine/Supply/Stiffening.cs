using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;

namespace Cablewright.Engine.Supply;

/// <summary>What a capacitor really gives.</summary>
/// <remarks>
/// Alone it holds a current I over a fall ΔV for t = C (ΔV − I ESR) / I, and not at all where its own resistance takes the whole
/// fall at once. It gives C (V² − (V − ΔV)²) / 2 on the way. The draw is that of the amplifiers at its own place; where there is
/// none, of all.
/// </remarks>
internal static class Stiffening
{
    public static CapacitorResult Of(CompleteBuild build, EnergyBalance balance, int capacitor)
    {
        CompleteCapacitor part = build.Capacitors[capacitor];
        double fall = build.Ruleset.Supply.CapacitorFall.Value * build.NominalFactor;
        double draw = DrawBeside(build, part.At, balance);
        double seconds = draw > 0 ? Math.Max(0, part.Farads * (fall - draw * part.SeriesOhms) / draw) : 0;
        double end = build.ChargingVolts - fall;
        return new CapacitorResult(
            part.At, part.Farads, part.SeriesOhms * 1000, draw, fall, seconds * 1000,
            part.Farads * (build.ChargingVolts * build.ChargingVolts - end * end) / 2);
    }

    private static double DrawBeside(CompleteBuild build, string place, EnergyBalance balance)
    {
        int amplifier = build.Stated.Amplifiers.ToList().FindIndex(each => each.Id == place);
        return amplifier >= 0 ? CircuitSolver.Amps(build.Draws[amplifier].Full, build.ChargingVolts) : balance.PeakAmps;
    }
}
