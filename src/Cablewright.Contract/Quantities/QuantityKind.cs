namespace Cablewright.Contract.Quantities;

/// <summary>What a quantity measures, and with it the units in which it may be written.</summary>
public enum QuantityKind
{
    /// <summary>A length; read into metres. The only kind that may be written as a sum: <c>16 ft 6 in</c>.</summary>
    Length,

    /// <summary>A mass; read into kilograms.</summary>
    Mass,

    /// <summary>A voltage; read into volts.</summary>
    Voltage,

    /// <summary>A current; read into amperes.</summary>
    Current,

    /// <summary>A power; read into watts.</summary>
    Power,

    /// <summary>A resistance; read into ohms.</summary>
    Resistance,

    /// <summary>A temperature; read into degrees Celsius. The only kind that may be negative.</summary>
    Temperature,

    /// <summary>A difference of temperatures; read into kelvin.</summary>
    TemperatureDifference,

    /// <summary>A ratio; read into a fraction: <c>80 %</c> is 0.8.</summary>
    Ratio,

    /// <summary>A battery's capacity; read into ampere-hours.</summary>
    Capacity,

    /// <summary>A level; read into decibels.</summary>
    Level,

    /// <summary>A time; read into seconds.</summary>
    Duration,

    /// <summary>A rotational speed; read into turns a minute.</summary>
    RotationalSpeed,

    /// <summary>A capacitance; read into farads.</summary>
    Capacitance,
}
