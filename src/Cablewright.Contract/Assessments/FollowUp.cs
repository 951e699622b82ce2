using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>A question for the person who wants the build.</summary>
public sealed record FollowUp
{
    /// <summary>The JSON pointer (RFC 6901) of the place in the build where the answer belongs.</summary>
    [Example("/amplifiers/1/efficiency")]
    public required string Pointer { get; init; }

    /// <summary>The question.</summary>
    [Example("What efficiency does the maker of the amplifier state at rated output?")]
    public required string Question { get; init; }

    /// <summary>What the answer could change.</summary>
    [Example("At 50 % the drop is above the limit, at 70 % it is not.")]
    public required string Why { get; init; }

    /// <summary>Where a person finds the answer.</summary>
    [Example("It is printed beside the fuses on the amplifier.")]
    public required string Where { get; init; }

    /// <summary>What may be answered.</summary>
    public required ExpectedAnswer Answer { get; init; }

    /// <summary>
    /// The values of which <c>question</c> and <c>why</c> are made, for a sentence of one's own: numbers in the unit that ends
    /// their name, ids and words; absent where there are none.
    /// </summary>
    [Example("""{ "amplifier": "bass", "nowVerdict": "pass", "verdict": "fail" }""", IsJson = true)]
    public IReadOnlyDictionary<string, Param>? Params { get; init; }
}
