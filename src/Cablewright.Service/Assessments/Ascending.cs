using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Assessments;

/// <summary>Points of a curve, each at a larger quantity than the one before.</summary>
internal static class Ascending
{
    /// <summary>
    /// The faults of those that are not; a text that cannot be read is a fault of its own and compares with none.
    /// </summary>
    /// <param name="rule">Reads the quantity.</param>
    /// <param name="texts">The quantity of each point, as sent.</param>
    /// <param name="code">The code of such a fault.</param>
    /// <param name="what">What the quantity is called.</param>
    /// <param name="accepted">What would be right.</param>
    public static IEnumerable<(int Index, Fault Fault)> Faults(
        QuantityRule rule, IEnumerable<string> texts, string code, string what, string accepted)
    {
        double before = double.NaN;
        foreach ((int index, string text) in texts.Index())
        {
            double value = rule.Read(text) is { Fault: null } reading ? reading.Value : double.NaN;
            if (value <= before)
            {
                string detail = $"this {what} is not above the one before it";
                yield return (index, new Fault("", code, detail, Excerpt.Of(text), accepted));
            }

            before = value;
        }
    }
}
