using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Completion;

/// <summary>Takes a value where it was stated, and where it was not, notes what is taken in its place.</summary>
internal sealed class AssumptionList(Ruleset ruleset)
{
    private readonly List<Assumption> noted = [];

    /// <summary>What was assumed so far, in the order of the build.</summary>
    public IReadOnlyList<Assumption> Noted => noted;

    /// <summary>The ruleset that the values come from.</summary>
    public Ruleset Ruleset => ruleset;

    /// <summary>A stated value, or a figure of the ruleset times a factor.</summary>
    public double Take(
        double? stated, AssumptionKind kind, Target at, Figure figure, double factor = 1, string? unit = null,
        Figure? most = null)
    {
        if (stated is { } value) return value;
        double taken = figure.Value * factor;
        Note(new AssumedFigure(kind, at, taken, unit ?? figure.Unit, figure) { Most = most });
        return taken;
    }

    /// <summary>Notes what was taken.</summary>
    public void Note(Assumption assumption) => noted.Add(assumption);
}
