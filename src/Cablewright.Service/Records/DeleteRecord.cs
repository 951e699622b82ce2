using Cablewright.Contract.Assessments;
using Cablewright.Service.Documents;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Records;

namespace Cablewright.Service.Records;

/// <summary><c>DELETE /v1/assessments/{id}</c>: deletes a recorded assessment.</summary>
internal static class DeleteRecord
{
    public static Operation Operation => new(
        "deleteRecord", Tag.Assessments, "Delete a recorded assessment", "Deletes it for good.")
    {
        Statuses = [StatusCodes.Status204NoContent],
        Scope = KeyScopes.RecordsWrite,
        Path = [RecordAddress.Id],
        Problems = [ProblemKinds.NotFound],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapDelete(RecordAddress.OfOne, Answer).DescribedAs<Assessment>(Operation);

    private static async Task<IResult> Answer(
        string id, HttpContext context, RecordStore store, CancellationToken cancellation) =>
        await store.DeleteAsync(Caller.Of(context).Key!.Shop, id, cancellation)
            ? Results.NoContent()
            : RecordAddress.Nothing(id);
}
