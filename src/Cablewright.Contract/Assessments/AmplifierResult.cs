using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>What one amplifier draws and what reaches it.</summary>
public sealed record AmplifierResult
{
    /// <summary>The id of the amplifier.</summary>
    [Example("bass")]
    public required string Id { get; init; }

    /// <summary>Its name, where the build gives one.</summary>
    [Example("Bass in the boot")]
    public string? Name { get; init; }

    /// <summary>Input current at full rated output, engine running, in amperes.</summary>
    [Figure("A", 92.4)]
    public required double PeakCurrentAmps { get; init; }

    /// <summary>The root-mean-square current that heats its wiring, the worst of the operating cases, in amperes.</summary>
    [Figure("A", 61.3)]
    public required double ThermalCurrentAmps { get; init; }

    /// <summary>Voltage at its terminals at full rated output, engine running, in volts.</summary>
    [Figure("V", 13.53)]
    public required double TerminalVolts { get; init; }

    /// <summary>Charging voltage less terminal voltage, in volts.</summary>
    [Figure("V", 0.27)]
    public required double DropVolts { get; init; }

    /// <summary>The same in percent of the charging voltage.</summary>
    [Figure("%", 1.96, Largest = 100)]
    public required double DropPercent { get; init; }

    /// <summary>
    /// What of that is lost in the conductors of supply and return, in volts: fuses, joints, the body and the vehicle's straps
    /// left out. This is what limits are for.
    /// </summary>
    [Figure("V", 0.21)]
    public required double ConductorDropVolts { get; init; }

    /// <summary>The same in percent of the charging voltage.</summary>
    [Figure("%", 1.52, Largest = 100)]
    public required double ConductorDropPercent { get; init; }

    /// <summary>What the wiring takes of the power sent to the amplifier at full rated output, in watts.</summary>
    [Figure("W", 24.9)]
    public required double LostInWireWatts { get; init; }

    /// <summary>
    /// Rated output less what the voltage at the terminals lets the amplifier give, in watts; 0 where its supply is regulated.
    /// </summary>
    [Figure("W", 0)]
    public required double OutputShortfallWatts { get; init; }
}
