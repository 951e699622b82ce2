using Cablewright.Contract.Problems;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Assessments;

/// <summary>
/// The answer to one build of a batch, the same that the build would get by itself: <c>assessment</c> where <c>status</c> is 200,
/// else <c>problem</c>.
/// </summary>
public sealed record BatchAnswer
{
    /// <summary>
    /// Which build it answers: the line that it stood on, blank lines counted, or its place in the array, from 1.
    /// </summary>
    [Figure("1", 3, Smallest = 1)]
    public required long Line { get; init; }

    /// <summary>The HTTP status that the build would get by itself.</summary>
    [Figure("1", 200, Smallest = 200, Largest = 599)]
    public required int Status { get; init; }

    /// <summary>The answer to the build.</summary>
    public Assessment? Assessment { get; init; }

    /// <summary>Why there is none. Its pointers go into the build itself.</summary>
    public Problem? Problem { get; init; }
}
