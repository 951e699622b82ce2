using static Microsoft.AspNetCore.Http.StatusCodes;

namespace Cablewright.Service.Problems;

/// <summary>Every kind of answer that is not 2xx.</summary>
internal static class ProblemKinds
{
    public static readonly ProblemKind NotUnderstood = new(
        "request.not-understood", Status400BadRequest, "The request cannot be read",
        "The body is not JSON, its shape is not the contract's, or a query parameter is unknown, repeated or missing. "
        + "Each fault is listed with its place.");

    public static readonly ProblemKind NotFound = new(
        "resource.not-found", Status404NotFound, "There is nothing here",
        "No resource has this address. The addresses are listed in /openapi/v1.json.");

    public static readonly ProblemKind MethodNotAllowed = new(
        "method.not-allowed", Status405MethodNotAllowed, "This method is not served here",
        "The resource exists but does not know the method; the header Allow lists those it knows.");

    public static readonly ProblemKind NotAcceptable = new(
        "answer.not-acceptable", Status406NotAcceptable, "No acceptable form of the answer",
        "The header Accept allows none of the forms that this resource has.");

    public static readonly ProblemKind TimedOut = new(
        "request.timed-out", Status408RequestTimeout, "The request came too slowly",
        "The body did not arrive in time. Send it again.");

    public static readonly ProblemKind TooLarge = new(
        "body.too-large", Status413PayloadTooLarge, "The request body is too large",
        $"A body may hold at most {Contract.ContractLimits.BodyBytes / 1024} KB.");

    public static readonly ProblemKind UnsupportedMediaType = new(
        "body.unsupported-media-type", Status415UnsupportedMediaType, "The request body is of another type",
        "Send application/json in UTF-8, uncompressed.");

    public static readonly ProblemKind FaultyBuild = new(
        "build.faulty", Status422UnprocessableEntity, "The build has faults",
        "The request has the right shape, but what it says cannot be assessed. All faults are listed at once.");

    public static readonly ProblemKind Faulty = new(
        "request.faulty", Status422UnprocessableEntity, "The request has faults",
        "The request has the right shape, but what it says cannot be worked with. All faults are listed at once.");

    public static readonly ProblemKind Failed = new(
        "service.failed", Status500InternalServerError, "The service failed",
        "This is a fault of the service, not of the request. Report it with the traceId.");

    public static readonly ProblemKind NotReady = new(
        "service.not-ready", Status503ServiceUnavailable, "The service does not compute correctly",
        "The built-in reference build does not give its known answer. Do not use this instance.");

    public static readonly ProblemKind Refused = new(
        "request.refused", Status400BadRequest, "The request was refused",
        "The request breaks the rules of HTTP.");

    /// <summary>All of them, by status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        NotUnderstood, Refused, NotFound, MethodNotAllowed, NotAcceptable, TimedOut, TooLarge, UnsupportedMediaType, FaultyBuild,
        Faulty, Failed, NotReady,
    ];

    /// <summary>The kind that an answer without a body stands for.</summary>
    public static ProblemKind ForStatus(int status) =>
        status == Status400BadRequest ? Refused
        : All.FirstOrDefault(kind => kind.Status == status) ?? (status < 500 ? Refused : Failed);
}
