using System.Security.Cryptography;
using System.Text;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Schema;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Service.Queries;
using Cablewright.Storage;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Records;

namespace Cablewright.Service.Records;

/// <summary>Keeps assessments for a shop: <c>POST /v1/assessments?record=true</c>.</summary>
internal static class RecordKeeping
{
    private const string Record = "record";
    private const string Prefix = "asm_";

    private static readonly string[] Names = [Record];
    private static readonly string[] Words = ["true", "false"];

    /// <summary>The parameter that asks for it.</summary>
    public static QueryParameter Parameter { get; } = QueryParameter.Plain<Asked>(
        Record, nameof(Asked.Record), "Whether to keep the assessment; not where left out.");

    /// <summary>Whether the query asks for a record, or what is wrong with it.</summary>
    public static (bool IsAsked, ProblemAnswer? Problem) IsAsked(HttpContext context)
    {
        (Dictionary<string, string> values, List<Fault> faults) = QueryText.Read(context.Request.QueryString, Names);
        string word = values.GetValueOrDefault(Record, Words[1]);
        if (!Words.Contains(word))
            faults.Add(new Fault("/" + Record, ShapeCodes.UnknownWord, "true or false?", Excerpt.Of(word), "true, false"));
        if (faults.Count > 0) return (false, FaultyRequest.Answer(ProblemKinds.NotUnderstood, faults));
        bool isAsked = word == Words[0];
        return (isAsked, isAsked ? Caller.Of(context).Refusal(null, KeyScopes.RecordsWrite) : null);
    }

    /// <summary>
    /// Keeps an assessment, with the build as it was sent; its id is made of all that is kept and of the shop. What is kept
    /// already is answered with 200.
    /// </summary>
    public static async Task<IResult> Keep(
        HttpContext context, Assessment assessment, Build build, CancellationToken cancellation)
    {
        string shop = Caller.Of(context).Key!.Shop;
        Assessment whole = assessment with { Build = build };
        string id = IdOf(shop, whole);
        byte[] body = AnswerJson.Write(whole with { Id = id }, AnswerJson.Shapes.Assessment);
        RecordStore store = context.RequestServices.GetRequiredService<RecordStore>();
        RecordWrite outcome = await store.AddAsync(shop, id, body, cancellation);
        if (ProblemOf(outcome, context) is { } problem) return problem;
        var json = new JsonAnswer(body, id, Caching.Private)
        {
            Status = outcome == RecordWrite.Created ? StatusCodes.Status201Created : StatusCodes.Status200OK,
            Location = $"/v1/assessments/{id}",
        };
        return await AssessmentAnswer.Of(context, build, whole with { Id = id }, json);
    }

    private static ProblemAnswer? ProblemOf(RecordWrite outcome, HttpContext context)
    {
        StorageSettings settings = context.RequestServices.GetRequiredService<StorageSettings>();
        return outcome switch
        {
            RecordWrite.TooMany => Full($"at most {settings.RecordsPerShop} records"),
            RecordWrite.TooLarge => Full($"records of at most {settings.RecordBytesPerShop} bytes together"),
            _ => null,
        };
    }

    private static ProblemAnswer Full(string quota) => new(
        ProblemKinds.RecordsFull, $"A shop may have {quota}. {ProblemKinds.RecordsFull.Meaning}", []);

    private static string IdOf(string shop, Assessment whole)
    {
        byte[] content = [.. Encoding.UTF8.GetBytes(shop + "\n"), .. AnswerJson.Write(whole, AnswerJson.Shapes.Assessment)];
        return Prefix + Convert.ToHexStringLower(SHA256.HashData(content));
    }

    /// <summary>What the query says.</summary>
    private sealed record Asked
    {
        [Example(true)]
        public bool Record { get; init; }
    }
}
