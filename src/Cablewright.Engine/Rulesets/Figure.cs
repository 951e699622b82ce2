namespace Cablewright.Engine.Rulesets;

/// <summary>A number that a verdict rests on, and where it comes from.</summary>
/// <param name="Id">Stable, dotted id.</param>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit; <c>1</c> for a ratio.</param>
/// <param name="Meaning">What it limits or stands for.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Provenance">How it was come by: <c>read</c>, <c>computed</c>, <c>from memory</c> or
/// <c>common practice, no source</c>.</param>
public sealed record Figure(string Id, double Value, string Unit, string Meaning, string Source, string Provenance)
{
    /// <summary>The unit of a ratio.</summary>
    public const string Ratio = "1";

    /// <summary>The unit of a voltage.</summary>
    public const string Volts = "V";

    /// <summary>The unit of a current.</summary>
    public const string Amps = "A";

    /// <summary>The unit of a resistance.</summary>
    public const string Ohms = "ohm";

    /// <summary>Source and provenance in one line, as answers carry it.</summary>
    public string Citation => Provenance is "read" or "computed" ? Source : $"{Source} ({Provenance})";
}
