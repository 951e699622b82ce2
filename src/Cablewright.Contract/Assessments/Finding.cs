using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>One thing that the assessment found.</summary>
public sealed record Finding
{
    /// <summary>Stable, dotted code, <c>subject.problem</c>; all are listed in this contract and by each ruleset.</summary>
    [Example("fuse.above-conductor-rating")]
    public required string Code { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What it is about: <c>safety</c>, <c>performance</c> or <c>supply</c>; absent where it is about a part of a kit or
    /// a cable on the bench.</summary>
    public Concern? Concern { get; init; }

    /// <summary>The JSON pointer (RFC 6901) into the build; empty for the build as a whole.</summary>
    [Example("/runs/0/fuse/rating")]
    public required string Pointer { get; init; }

    /// <summary>
    /// The other places where the same is wrong alike; the figures are those at <c>pointer</c>. Absent where there is none.
    /// </summary>
    [Example("/runs/1/fuse/rating")]
    public IReadOnlyList<string>? AlsoAt { get; init; }

    /// <summary>What was found, in the units of the build.</summary>
    [Example("The 200 A fuse of run main is above what its conductor may carry, 169 A.")]
    public required string Message { get; init; }

    /// <summary>
    /// The values of which <c>message</c> is made, for a sentence of one's own: numbers in the unit that ends their name, ids and
    /// words; absent where there are none.
    /// </summary>
    [Example("""{ "run": "main", "ratingAmps": 200, "ampacityAmps": 169 }""", IsJson = true)]
    public IReadOnlyDictionary<string, Param>? Params { get; init; }

    /// <summary>The figure that was judged, in <c>unit</c>; absent where there is none.</summary>
    [Figure("see unit", 200, Smallest = double.NegativeInfinity)]
    public double? Measured { get; init; }

    /// <summary>The figure it was judged against, in <c>unit</c>; absent where there is none.</summary>
    [Figure("see unit", 169, Smallest = double.NegativeInfinity)]
    public double? Limit { get; init; }

    /// <summary>The unit of <c>measured</c> and <c>limit</c>.</summary>
    [Example("A")]
    public string? Unit { get; init; }

    /// <summary>The id of the figure in the ruleset that the finding rests on.</summary>
    [Example("fuse.max-of-ampacity")]
    public required string Rule { get; init; }

    /// <summary>Where the rule comes from.</summary>
    [Example("33 CFR 183.425 table 5")]
    public required string Source { get; init; }

    /// <summary>What would cure it.</summary>
    [Example("Fit a fuse of at most 150 A, or a larger conductor.")]
    public required string Remedy { get; init; }

    /// <summary>The formula with the numbers put in.</summary>
    [Example("200 A > 1 x 169 A")]
    public required string Workings { get; init; }
}
