using Cablewright.Service.Documents;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Queries;

/// <summary>
/// Refuses parameters of calls that have none: one that belongs to another call must not be dropped in silence. Calls with
/// parameters read their own; health checks are asked by programs that add what they like.
/// </summary>
internal static class QueryValidation
{
    /// <summary>Lets the request through or answers 400.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        Operation? operation = context.GetEndpoint()?.Metadata.GetMetadata<Operation>();
        if (operation is not { Query.Count: 0 } || operation.Tag == Tag.Health) return next(context);
        List<Fault> faults = QueryText.Read(context.Request.QueryString, []).Faults;
        return faults.Count == 0
            ? next(context)
            : FaultyRequest.Answer(ProblemKinds.NotUnderstood, faults).ExecuteAsync(context);
    }
}
