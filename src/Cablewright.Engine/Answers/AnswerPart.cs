namespace Cablewright.Engine.Answers;

/// <summary>The parts of an answer that are optional.</summary>
public enum AnswerPart
{
    /// <summary>The questions to ask next.</summary>
    AskNext,

    /// <summary>The headroom.</summary>
    Headroom,

    /// <summary>The robustness.</summary>
    Robustness,

    /// <summary>The alternatives of some runs.</summary>
    Alternatives,

    /// <summary>The trade-off between cost and loss.</summary>
    Frontier,
}
