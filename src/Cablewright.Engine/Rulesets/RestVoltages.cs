using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rulesets;

/// <summary>The rest voltage of a battery by its state of charge, straight between the points of published lists.</summary>
public sealed class RestVoltages
{
    private readonly RestVoltageRow[] rows;
    private readonly RestVoltageRow[][] byChemistry;

    /// <exception cref="InvalidDataException">A chemistry has fewer than two points.</exception>
    internal RestVoltages(RestVoltageRow[] rows)
    {
        this.rows = rows;
        byChemistry =
            [.. Enum.GetValues<Chemistry>().Select(chemistry => rows.Where(row => row.Chemistry == chemistry.Word()).ToArray())];
        if (Array.Exists(byChemistry, points => points.Length < 2))
            throw new InvalidDataException("The rest voltages: a chemistry has fewer than two points.");
    }

    /// <summary>Every point, with its source.</summary>
    public IReadOnlyList<RestVoltageRow> All => rows;

    /// <summary>Rest voltage of a battery of 12 V nominal.</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="stateOfCharge">0 to 1.</param>
    public double At(Chemistry chemistry, double stateOfCharge)
    {
        RestVoltageRow[] points = byChemistry[(int)chemistry];
        int above = Math.Max(1, Array.FindIndex(points, point => point.StateOfCharge >= stateOfCharge));
        RestVoltageRow from = points[above - 1], to = points[above];
        double along = (stateOfCharge - from.StateOfCharge) / (to.StateOfCharge - from.StateOfCharge);
        return from.Volts + along * (to.Volts - from.Volts);
    }
}

/// <summary>One point of a list of rest voltages.</summary>
/// <param name="Chemistry">What the battery is made of.</param>
/// <param name="StateOfCharge">0 to 1.</param>
/// <param name="Volts">Rest voltage of a battery of 12 V nominal.</param>
/// <param name="Source">Where the point comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record RestVoltageRow(string Chemistry, double StateOfCharge, double Volts, string Source, string Provenance);
