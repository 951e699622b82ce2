using Cablewright.Contract.Problems;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using Cablewright.Storage.Keys;

namespace Cablewright.Service.Documents;

/// <summary>What the published contract says of one operation.</summary>
/// <param name="Id">The operationId.</param>
/// <param name="Tag">The tag it stands under.</param>
/// <param name="Summary">What it does, in a line.</param>
/// <param name="Description">What a caller has to know.</param>
internal sealed record Operation(string Id, Tag Tag, string Summary, string Description)
{
    /// <summary>The request body, where there is one.</summary>
    public RequestBody? Body { get; init; }

    /// <summary>The statuses of its good answers; 204 goes without a body.</summary>
    public IReadOnlyList<int> Statuses { get; init; } = [StatusCodes.Status200OK];

    /// <summary>What a shop's key must be allowed to do; nothing where no key is needed.</summary>
    public KeyScopes Scope { get; init; }

    /// <summary>The key is needed for a part of what it does only.</summary>
    public bool IsKeyOptional { get; init; }

    /// <summary>The parts of its path that a caller fills in.</summary>
    public IReadOnlyList<PathParameter> Path { get; init; } = [];

    /// <summary>Whether it takes <c>If-Match</c> and <c>If-None-Match</c>.</summary>
    public bool IsConditional { get; init; }

    /// <summary>
    /// Whether the tag of its answer names the state that a write depends on: its bytes are then sent as they are, since
    /// <c>If-Match</c> compares strongly.
    /// </summary>
    public bool IsState { get; init; }

    /// <summary>Whether it computes, which only so many may do at once and for so long.</summary>
    public bool Computes { get; init; }

    /// <summary>Whether body and answer are lists, which can also come one item a line.</summary>
    public bool IsBatch { get; init; }

    /// <summary>Whether it answers as a drawing and as a job sheet too.</summary>
    public bool IsDrawn { get; init; }

    /// <summary>Whether a caller that already has the answer is told so.</summary>
    public bool IsCacheable { get; init; }

    /// <summary>Whether a cache on the way may keep the answer and give it to others.</summary>
    public bool IsShared => IsCacheable && Scope == KeyScopes.None;

    /// <summary>The problems it can be answered with, besides those that follow from the rest.</summary>
    public IReadOnlyList<ProblemKind> Problems { get; init; } = [];

    /// <summary>The query parameters, where there are any.</summary>
    public IReadOnlyList<QueryParameter> Query { get; init; } = [];
}

/// <summary>Tells the framework what the contract says of a route.</summary>
internal static class OperationMetadata
{
    private static readonly ProblemKind[] OfEveryOperation =
        [ProblemKinds.Refused, ProblemKinds.MethodNotAllowed, ProblemKinds.NotAcceptable, ProblemKinds.Failed];

    private static readonly ProblemKind[] OfEveryBody =
        [ProblemKinds.TimedOut, ProblemKinds.TooLarge, ProblemKinds.UnsupportedMediaType];

    private static readonly ProblemKind[] OfEveryKey =
        [ProblemKinds.KeyMissing, ProblemKinds.KeyRefused, ProblemKinds.KeyWithoutRight, ProblemKinds.CatalogueUnavailable];

    /// <summary>Describes a route as this operation with this answer, and makes ready what reads and checks its body.</summary>
    public static RouteHandlerBuilder DescribedAs<TAnswer>(this RouteHandlerBuilder route, Operation operation)
    {
        string[] lines = operation.IsBatch ? [JsonMediaType.Lines] : [];
        string[] forms = operation.IsDrawn ? [AnswerForms.Drawing, AnswerForms.Sheet] : lines;
        route.WithMetadata(operation)
            .WithName(operation.Id)
            .WithTags(operation.Tag.Name)
            .WithSummary(operation.Summary)
            .WithDescription(operation.Description);
        foreach (int status in operation.Statuses)
        {
            if (status == StatusCodes.Status204NoContent) route.Produces(status);
            else route.Produces<TAnswer>(status, JsonAnswer.ContentType, forms);
        }

        if (operation.Body is { } body)
        {
            ShapeReader.Prepare(body.Shape);
            Validators.Of(body.Shape.Type);
            route.Accepts(body.Type, JsonAnswer.ContentType, lines);
        }

        if (operation.IsCacheable) route.Produces(StatusCodes.Status304NotModified);
        foreach (int status in operation.AllProblems().Select(kind => kind.Status).Distinct().Order())
            route.Produces<Problem>(status, ProblemAnswer.ContentType);
        return route;
    }

    /// <summary>Every kind of problem that an operation can be answered with.</summary>
    public static IEnumerable<ProblemKind> AllProblems(this Operation operation) => operation.Problems
        .Concat(operation.Body is null ? [] : OfEveryBody)
        .Concat(operation.Computes ? [ProblemKinds.ComputationTooLong, ProblemKinds.TooMuchWork] : [])
        .Concat(operation.Computes || operation.Body is not null ? [ProblemKinds.Busy] : [])
        .Concat(operation.Scope == KeyScopes.None ? [] : OfEveryKey)
        .Concat(operation.Tag == Tag.Health ? [] : [ProblemKinds.NotUnderstood, ProblemKinds.TooManyRequests])
        .Concat(OfEveryOperation);
}
