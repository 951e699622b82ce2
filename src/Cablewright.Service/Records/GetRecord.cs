using System.Text.Json;
using System.Text.Unicode;
using Cablewright.Contract.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Records;

namespace Cablewright.Service.Records;

/// <summary><c>GET /v1/assessments/{id}</c>: the very bytes that were answered when it was recorded.</summary>
internal static class GetRecord
{
    public static Operation Operation => new(
        "readRecord", Tag.Assessments, "Read a recorded assessment",
        "The very bytes that were answered when it was recorded, whatever rulesets and releases came since.")
    {
        IsCacheable = true,
        Scope = KeyScopes.RecordsRead,
        Path = [RecordAddress.Id],
        Problems = [ProblemKinds.NotFound, ProblemKinds.RecordUnreadable],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet(RecordAddress.OfOne, Answer).DescribedAs<Assessment>(Operation);

    private static async Task<IResult> Answer(
        string id, HttpContext context, RecordStore store, CancellationToken cancellation) =>
        await store.FindAsync(Caller.Of(context).Key!.Shop, id, cancellation) switch
        {
            null => RecordAddress.Nothing(id),
            byte[] body when IsSound(body) => new JsonAnswer(body, id, Caching.Private),
            _ => new ProblemAnswer(
                ProblemKinds.RecordUnreadable, $"The record {id} cannot be read. {ProblemKinds.RecordUnreadable.Meaning}", []),
        };

    /// <summary>What a later release wrote into it is answered as it stands; what is no JSON is not an answer.</summary>
    private static bool IsSound(byte[] body)
    {
        if (!Utf8.IsValid(body)) return false;
        try
        {
            var reader = new Utf8JsonReader(body);
            while (reader.Read())
            {
                // Only to come to the end.
            }

            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
