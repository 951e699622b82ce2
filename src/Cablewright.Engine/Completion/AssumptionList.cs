using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Text;

namespace Cablewright.Engine.Completion;

/// <summary>Takes a value where it was stated, and where it was not, notes what is taken in its place.</summary>
internal sealed class AssumptionList(Ruleset ruleset, Phrase phrase)
{
    private readonly List<Assumption> noted = [];

    /// <summary>What was assumed so far, in the order of the build.</summary>
    public IReadOnlyList<Assumption> Noted => noted;

    /// <summary>The ruleset that the values come from.</summary>
    public Ruleset Ruleset => ruleset;

    /// <summary>A stated value, or a figure of the ruleset times a factor.</summary>
    public double Take(double? stated, string pointer, Figure figure, string reason, double factor = 1, string? unit = null)
    {
        if (stated is { } value) return value;
        double taken = figure.Value * factor;
        Note(pointer, phrase.Value(taken, unit ?? figure.Unit), reason, figure.Citation);
        return taken;
    }

    /// <summary>The same for a member of a thing, whose pointer is put together only where something is noted.</summary>
    public double Take(
        double? stated, string at, string member, Figure figure, string reason, double factor = 1, string? unit = null) =>
        stated ?? Take(null, at + member, figure, reason, factor, unit);

    /// <summary>Notes a value that was taken.</summary>
    public void Note(string pointer, string value, string reason, string source) =>
        noted.Add(new Assumption(pointer, value, reason, source));
}
