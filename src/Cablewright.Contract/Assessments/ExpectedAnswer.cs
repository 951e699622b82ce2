using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>What may be put at the place of a question: enough to ask it in a form or in a conversation.</summary>
public sealed record ExpectedAnswer
{
    /// <summary>What it is.</summary>
    public required AnswerKind Kind { get; init; }

    /// <summary>The words to choose from; absent but for a <c>word</c>.</summary>
    [Example("copper")]
    public IReadOnlyList<string>? Choices { get; init; }

    /// <summary>The smallest <c>quantity</c> that is accepted.</summary>
    [Example("1 A")]
    public string? Smallest { get; init; }

    /// <summary>The largest.</summary>
    [Example("2000 A")]
    public string? Largest { get; init; }

    /// <summary>A <c>quantity</c> as it is written.</summary>
    [Example("60 A")]
    public string? Example { get; init; }

    /// <summary>What is taken as long as nothing is answered; absent where nothing is.</summary>
    [Example("90 C")]
    public string? Assumed { get; init; }
}
