using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>A run with another conductor in it, everything else left as it is; chosen fuses are chosen anew.</summary>
public sealed record Alternative
{
    /// <summary>The other conductor.</summary>
    public required AlternativeConductor Conductor { get; init; }

    /// <summary>The run's own drop at its peak current, in volts.</summary>
    [Figure("V", 0.21)]
    public required double DropVolts { get; init; }

    /// <summary>The heat that it makes then, in watts.</summary>
    [Figure("W", 18)]
    public required double LossWatts { get; init; }

    /// <summary>Its conductor's temperature, in degrees Celsius.</summary>
    [Figure("°C", 66, Smallest = double.NegativeInfinity)]
    public required double TemperatureCelsius { get; init; }

    /// <summary>Thermal current over ampacity; absent where the surroundings leave no ampacity.</summary>
    [Figure("1", 0.7)]
    public double? Utilisation { get; init; }

    /// <summary>The verdict of the whole build.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>
    /// What the run costs, as <c>sizing.cost</c>; absent where prices are stated and this conductor has none.
    /// </summary>
    [Figure("1", 12.5)]
    public double? Cost { get; init; }

    /// <summary>Mass of the run's metal, in grams.</summary>
    [Figure("g", 820)]
    public required double MassGrams { get; init; }
}

/// <summary>The conductor of an alternative.</summary>
public sealed record AlternativeConductor
{
    /// <summary>Size.</summary>
    [Example("2 AWG")]
    public required string Size { get; init; }

    /// <summary>Metal.</summary>
    public required Material Material { get; init; }

    /// <summary>How many lie in parallel.</summary>
    [Figure("1", 1)]
    public required int Count { get; init; }
}
