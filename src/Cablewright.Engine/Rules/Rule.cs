using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Rules;

/// <summary>A rule that builds are held against. Its file holds all that there is to it but the words of its findings.</summary>
/// <param name="kind">What does not hold where it is violated.</param>
/// <param name="severity">How much a violation weighs, unless the rule says so itself.</param>
/// <param name="code">The code of its findings, which is for ever.</param>
/// <param name="figure">The figure of the ruleset that it rests on.</param>
/// <param name="meaning">What its findings say, for whoever reads the code.</param>
internal abstract class Rule(ViolationKind kind, Severity severity, string code, FigureOf figure, string meaning)
{
    /// <summary>What does not hold where it is violated.</summary>
    public ViolationKind Kind => kind;

    /// <summary>The figure of a ruleset that it rests on.</summary>
    public Figure FigureIn(Ruleset ruleset) => figure(ruleset);

    /// <summary>The code of its findings and what they say.</summary>
    public CodeMeaning Finding { get; } = new(code, meaning);

    /// <summary>What it is for.</summary>
    public virtual Concern Concern => Concern.Safety;

    /// <summary>Whether a violation is about a run, which its index then names.</summary>
    public virtual bool IsOfRun => false;

    /// <summary>It is violated by a run, an amplifier, a battery or another part of the build.</summary>
    protected Violation By(int part, double measured = 0, double limit = 0) => new(kind, severity, part, false, measured, limit);

    /// <summary>It is violated at an end of a run.</summary>
    protected Violation At(RunEnd end, double measured = 0, double limit = 0) =>
        new(kind, severity, end.Run, end.IsFar, measured, limit);
}
