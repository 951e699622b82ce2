using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.DesignRules;

/// <remarks>A battery's strap carries the starter and every fault of the vehicle, whatever the amplifiers draw.</remarks>
internal sealed class StrapTooSmall() : RunRule(
    ViolationKind.StrapTooSmall, Severity.Fail, "return.strap-too-small", rules => rules.Return.LeastStrap,
    "A ground that carries the starter's current, such as a battery's own strap, is smaller than it may be.")
{
    /// <inheritdoc/>
    public override Violation? Check(DesignFacts facts, int run)
    {
        if (!facts.Circuit.CarriesStarter(run)) return null;
        double least = FigureIn(facts.Build.Ruleset).Value;
        ConductorChoice strap = facts.Design.Conductors[run];
        double copper = strap.Conductor.CopperEquivalentMm2 * strap.Count;
        return Significant.Exceeds(least, copper) ? By(run, copper, least) : null;
    }
}
