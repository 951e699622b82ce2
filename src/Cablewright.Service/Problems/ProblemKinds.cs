using Cablewright.Contract;
using static Microsoft.AspNetCore.Http.StatusCodes;

namespace Cablewright.Service.Problems;

/// <summary>Every kind of answer that is not 2xx.</summary>
internal static class ProblemKinds
{
    public static readonly ProblemKind NotUnderstood = new(
        "request.not-understood", Status400BadRequest, "The request cannot be read",
        "The body is not JSON, its shape is not the contract's, or a query parameter is unknown, repeated or missing. "
        + "Each fault is listed with its place.");

    public static readonly ProblemKind KeyMissing = new(
        "key.missing", Status401Unauthorized, "A key is needed",
        "Send the key as Authorization: Bearer and the key. The operator of the service makes keys.");

    public static readonly ProblemKind KeyRefused = new(
        "key.refused", Status401Unauthorized, "The key is not valid",
        "The key is not known, was revoked or has expired.");

    public static readonly ProblemKind KeyWithoutRight = new(
        "key.without-right", Status403Forbidden, "The key may not do this",
        "The key is valid but lacks the scope that this call needs.");

    public static readonly ProblemKind NotFound = new(
        "resource.not-found", Status404NotFound, "There is nothing here",
        "No resource has this address, or what it names is not there; the detail says which. The addresses are listed in "
        + "/openapi/v1.json.");

    public static readonly ProblemKind MethodNotAllowed = new(
        "method.not-allowed", Status405MethodNotAllowed, "This method is not served here",
        "The resource exists but does not know the method; the header Allow lists those it knows.");

    public static readonly ProblemKind NotAcceptable = new(
        "answer.not-acceptable", Status406NotAcceptable, "No acceptable form of the answer",
        "The header Accept allows none of the forms that this resource has.");

    public static readonly ProblemKind TimedOut = new(
        "request.timed-out", Status408RequestTimeout, "The request came too slowly",
        "The body did not arrive in time. Send it again.");

    public static readonly ProblemKind CatalogueFull = new(
        "catalogue.full", Status409Conflict, "The kits of the shop are too many or too large",
        "A shop may have as many kits, and as many bytes of them together, as the operator of the service allows. Delete some "
        + "first.");

    public static readonly ProblemKind RecordsFull = new(
        "records.full", Status409Conflict, "The records of the shop are too many or too large",
        "A shop may have as many records, and as many bytes of them together, as the operator of the service allows. Delete "
        + "some first.");

    public static readonly ProblemKind KitUnreadable = new(
        "kit.unreadable", Status409Conflict, "The kept kit cannot be read",
        "It was damaged where it is kept, or a later release wrote it. Put it again with the answer's ETag as If-Match, or "
        + "delete it.");

    public static readonly ProblemKind RecordUnreadable = new(
        "record.unreadable", Status409Conflict, "The record cannot be read",
        "It was damaged where it is kept. Delete it and record the build anew.");

    public static readonly ProblemKind ConditionFailed = new(
        "condition.failed", Status412PreconditionFailed, "The kit is in another state",
        "Somebody else changed, made or deleted it. Read it again and decide anew.");

    public static readonly ProblemKind ConditionMissing = new(
        "condition.missing", Status428PreconditionRequired, "Say which state is to be replaced",
        "The kit is there already. To replace it, send If-Match with the ETag of the state that you have seen.");

    public static readonly ProblemKind TooLarge = new(
        "body.too-large", Status413PayloadTooLarge, "The request body is too large",
        $"A body, or one build of a batch, may hold at most {ContractLimits.BodyBytes / 1024} KB; an array of builds at most "
        + $"{ContractLimits.BatchBuilds} builds and {ContractLimits.BatchBytes / 1024 / 1024} MB.");

    public static readonly ProblemKind UnsupportedMediaType = new(
        "body.unsupported-media-type", Status415UnsupportedMediaType, "The request body is of another type",
        "Send application/json (a batch may also be application/x-ndjson) in UTF-8, uncompressed.");

    public static readonly ProblemKind FaultyBuild = new(
        "build.faulty", Status422UnprocessableEntity, "The build has faults",
        "The request has the right shape, but what it says cannot be assessed. All faults are listed at once.");

    public static readonly ProblemKind TooMuchWork = new(
        "build.too-much-work", Status422UnprocessableEntity, "The build takes too much work",
        "Its wiring is so interwoven that it takes more computation than one request may ask for, everything optional left out. "
        + "The work is counted, not timed, so the same build is refused everywhere. Fewer loops, runs or batteries take less.");

    public static readonly ProblemKind Faulty = new(
        "request.faulty", Status422UnprocessableEntity, "The request has faults",
        "The request has the right shape, but what it says cannot be worked with. All faults are listed at once.");

    public static readonly ProblemKind TooManyRequests = new(
        "requests.too-many", Status429TooManyRequests, "Too much work",
        "A caller may ask only for so much work a minute, one without a key for much less than a shop. Wait as long as "
        + "Retry-After says, or send a shop's key.")
    {
        RetryAfterSeconds = 2,
    };

    public static readonly ProblemKind Failed = new(
        "service.failed", Status500InternalServerError, "The service failed",
        "This is a fault of the service, not of the request. Report it with the traceId.");

    public static readonly ProblemKind NotReady = new(
        "service.not-ready", Status503ServiceUnavailable, "The service is not ready",
        "The built-in reference build does not give its known answer, the catalogue was not read yet, or the service is about "
        + "to stop. Do not use this instance.");

    public static readonly ProblemKind Busy = new(
        "service.busy", Status503ServiceUnavailable, "The service is busy",
        "Every place for a computation is taken and enough calls wait for one, or the request bodies that arrive take up all the "
        + "memory set aside for them. Nothing was computed: send it again after Retry-After.")
    {
        RetryAfterSeconds = 2,
    };

    public static readonly ProblemKind ComputationTooLong = new(
        "computation.too-long", Status503ServiceUnavailable, "The computation took too long",
        "It was ended at the limit that the operator set, so as not to hold up others. Ask again when the service is less busy, "
        + "or ask less at once: state what is known, leave out what is not needed of \"include\".")
    {
        RetryAfterSeconds = 10,
    };

    public static readonly ProblemKind CatalogueUnavailable = new(
        "catalogue.unavailable", Status503ServiceUnavailable, "The catalogue cannot be used now",
        "The database with kits, keys and records does not answer. Assessing goes on without it. A write took "
        + "place as a whole or not at all: repeat it as it was, with the same If-Match. What did take place is then answered "
        + "with 200, or with 404 where it was a deletion; 412 says that the kit is there or was changed: read it.")
    {
        RetryAfterSeconds = 2,
    };

    public static readonly ProblemKind Refused = new(
        "request.refused", Status400BadRequest, "The request was refused",
        "The request breaks the rules of HTTP.");

    /// <summary>All of them, by status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        NotUnderstood, Refused, KeyMissing, KeyRefused, KeyWithoutRight, NotFound, MethodNotAllowed, NotAcceptable, TimedOut,
        CatalogueFull, RecordsFull, KitUnreadable, RecordUnreadable, ConditionFailed, TooLarge, UnsupportedMediaType,
        FaultyBuild, TooMuchWork, Faulty, ConditionMissing, TooManyRequests,
        Failed, NotReady, Busy, ComputationTooLong, CatalogueUnavailable,
    ];

    /// <summary>The kind that an answer without a body stands for.</summary>
    public static ProblemKind ForStatus(int status) =>
        status == Status400BadRequest ? Refused
        : All.FirstOrDefault(kind => kind.Status == status) ?? (status < 500 ? Refused : Failed);
}
