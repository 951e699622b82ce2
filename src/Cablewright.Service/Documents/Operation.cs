using System.Text.Json.Nodes;
using Cablewright.Contract.Problems;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Documents;

/// <summary>What the published contract says of one operation.</summary>
/// <param name="Id">The operationId.</param>
/// <param name="Tag">The tag it stands under.</param>
/// <param name="Summary">What it does, in a line.</param>
/// <param name="Description">What a caller has to know.</param>
internal sealed record Operation(string Id, string Tag, string Summary, string Description)
{
    /// <summary>The type of the request body, where there is one.</summary>
    public Type? Body { get; init; }

    /// <summary>A right request body.</summary>
    public Func<JsonNode?>? Example { get; init; }

    /// <summary>Whether a caller that already has the answer is told so.</summary>
    public bool IsCacheable { get; init; }

    /// <summary>The problems it can be answered with, besides those that every operation has.</summary>
    public IReadOnlyList<ProblemKind> Problems { get; init; } = [];

    /// <summary>The query parameters, where there are any.</summary>
    public IReadOnlyList<QueryParameter> Query { get; init; } = [];
}

/// <summary>Tells the framework what the contract says of a route.</summary>
internal static class OperationMetadata
{
    private static readonly ProblemKind[] OfEveryOperation =
        [ProblemKinds.Refused, ProblemKinds.MethodNotAllowed, ProblemKinds.NotAcceptable, ProblemKinds.Failed];

    /// <summary>Describes a route as this operation with this answer.</summary>
    public static void DescribedAs<TAnswer>(this RouteHandlerBuilder route, Operation operation)
    {
        route.WithMetadata(operation)
            .WithName(operation.Id)
            .WithTags(operation.Tag)
            .WithSummary(operation.Summary)
            .WithDescription(operation.Description)
            .Produces<TAnswer>(StatusCodes.Status200OK, JsonAnswer.ContentType);
        if (operation.Body is not null) route.Accepts(operation.Body, JsonAnswer.ContentType);
        if (operation.IsCacheable) route.Produces(StatusCodes.Status304NotModified);
        foreach (int status in operation.AllProblems().Select(kind => kind.Status).Distinct().Order())
            route.Produces<Problem>(status, ProblemAnswer.ContentType);
    }

    /// <summary>Every kind of problem that an operation can be answered with.</summary>
    public static IEnumerable<ProblemKind> AllProblems(this Operation operation) => operation.Problems.Concat(OfEveryOperation);
}
