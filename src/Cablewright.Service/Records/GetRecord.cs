using System.Text.Json;
using System.Text.Unicode;
using Cablewright.Contract.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
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
        "The very bytes that were answered when it was recorded, whatever rulesets and releases came since. Drawing and job "
        + "sheet are made of them anew. " + AnswerForms.Description)
    {
        IsDrawn = true,
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
            byte[] body when IsSound(body) => await Form(context, body, new JsonAnswer(body, id, Caching.Private)),
            _ => Unreadable(id),
        };

    /// <summary>A record is read only where it has to be drawn.</summary>
    private static async Task<IResult> Form(HttpContext context, byte[] body, JsonAnswer json)
    {
        if (AnswerForms.WantedBy(context.Request) == JsonAnswer.ContentType) return json;
        try
        {
            return JsonSerializer.Deserialize(body, AnswerJson.Shapes.Assessment) is { Build: { } build } assessment
                ? await AssessmentAnswer.Of(context, build, assessment, json)
                : Unreadable((string)context.Request.RouteValues["id"]!);
        }
        catch (JsonException)
        {
            return Unreadable((string)context.Request.RouteValues["id"]!);
        }
    }

    private static ProblemAnswer Unreadable(string id) => new(
        ProblemKinds.RecordUnreadable, $"The record {id} cannot be read. {ProblemKinds.RecordUnreadable.Meaning}", []);

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
