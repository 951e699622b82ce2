namespace Cablewright.Engine.Rulesets;

/// <summary>Which figure of a ruleset is meant, whatever the ruleset.</summary>
internal delegate Figure FigureOf(Ruleset ruleset);
