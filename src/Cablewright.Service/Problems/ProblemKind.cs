namespace Cablewright.Service.Problems;

/// <summary>One kind of answer that is not 2xx.</summary>
/// <param name="Code">Its stable code, the last part of the problem's <c>type</c>.</param>
/// <param name="Status">The HTTP status that it is answered with.</param>
/// <param name="Title">Its name.</param>
/// <param name="Meaning">When it is given and what to do about it.</param>
internal sealed record ProblemKind(string Code, int Status, string Title, string Meaning)
{
    /// <summary>After how many seconds it is worth trying again, where that can be said.</summary>
    public int? RetryAfterSeconds { get; init; }
}
