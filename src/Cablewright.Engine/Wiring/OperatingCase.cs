namespace Cablewright.Engine.Wiring;

/// <summary>The states of the supply in which wiring is judged.</summary>
internal enum OperatingCase
{
    /// <summary>Engine running: the charging battery holds the charging voltage, other batteries give nothing.</summary>
    Running,

    /// <summary>
    /// Running, while an alternator at a place of its own gives next to nothing and all comes from the battery.
    /// </summary>
    AlternatorResting,

    /// <summary>Running, with the other batteries half charged and recharging.</summary>
    Recharging,

    /// <summary>
    /// Engine off, or more drawn than the alternator gives: the charging battery at its lowest working voltage.
    /// </summary>
    LowVoltage,
}
