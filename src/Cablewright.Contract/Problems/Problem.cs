using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Problems;

/// <summary>Why a request was not answered (RFC 9457), the shape of every answer that is not 2xx.</summary>
public sealed record Problem
{
    /// <summary>
    /// The address of the page that explains this kind of problem, under the address that the request was sent to.
    /// </summary>
    [Example("https://cablewright.example/docs/problems/build.faulty")]
    public required string Type { get; init; }

    /// <summary>The kind of problem, always the same words for the same <c>code</c>.</summary>
    [Example("The build has faults")]
    public required string Title { get; init; }

    /// <summary>The HTTP status of the answer.</summary>
    [Figure("1", 422, Smallest = 400, Largest = 599)]
    public required int Status { get; init; }

    /// <summary>What is wrong with this request.</summary>
    [Example("2 faults in the request body.")]
    public required string Detail { get; init; }

    /// <summary>Stable, dotted code of the kind of problem; all are listed in this contract.</summary>
    [Example("build.faulty")]
    public required string Code { get; init; }

    /// <summary>Names this request in the log of the service; also in the header X-Correlation-Id.</summary>
    [Example("0f8fad5bd9cb469fa16570867728950e")]
    public required string TraceId { get; init; }

    /// <summary>Every fault that was found; empty where the kind of problem says it all.</summary>
    public required IReadOnlyList<ProblemError> Errors { get; init; }
}
