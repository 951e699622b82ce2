using System.Security.Cryptography;
using System.Text;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Service.Queries;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Records;

namespace Cablewright.Service.Records;

/// <summary>Assessments that a shop keeps: <c>POST /v1/assessments?record=true</c>, and reading and deleting them.</summary>
internal static class RecordAnswers
{
    public const string Record = "record";

    private const string Prefix = "asm_";
    private const string AskAgain = "private, no-cache";

    private static readonly string[] Names = [Record];
    private static readonly string[] Words = ["true", "false"];

    /// <summary>Whether the query asks for a record, or what is wrong with it.</summary>
    public static (bool IsAsked, ProblemAnswer? Problem) IsAsked(HttpContext context)
    {
        (Dictionary<string, string> values, List<Fault> faults) = QueryText.Read(context.Request.QueryString, Names);
        string word = values.GetValueOrDefault(Record, Words[1]);
        if (!Words.Contains(word))
            faults.Add(new Fault("/" + Record, ShapeCodes.UnknownWord, "true or false?", Excerpt.Of(word), "true, false"));
        if (faults.Count > 0) return (false, (ProblemAnswer)FaultyRequest.Answer(ProblemKinds.NotUnderstood, faults));
        bool isAsked = word == Words[0];
        ProblemKind? refusal = isAsked ? Caller.Of(context).Refusal(null, KeyScopes.RecordsWrite) : null;
        return (isAsked, refusal is null ? null : new ProblemAnswer(refusal));
    }

    /// <summary>
    /// Keeps an assessment, with the build as it was sent; its id is made of all that is kept and of the shop. What is kept already
    /// is answered with 200.
    /// </summary>
    public static async Task<IResult> Keep(
        HttpContext context, Assessment assessment, Build build, CancellationToken cancellation)
    {
        string shop = Caller.Of(context).Key!.Shop;
        Assessment whole = assessment with { Build = build };
        string id = IdOf(shop, whole);
        byte[] body = AnswerJson.Write(whole with { Id = id }, AnswerJson.Shapes.Assessment);
        bool isNew = await context.RequestServices.GetRequiredService<RecordStore>().AddAsync(shop, id, body, cancellation);
        return new JsonAnswer(body, id, AskAgain)
        {
            Status = isNew ? StatusCodes.Status201Created : StatusCodes.Status200OK,
            Location = $"/v1/assessments/{id}",
        };
    }

    /// <summary><c>GET /v1/assessments/{id}</c>: the very bytes that were answered when it was recorded.</summary>
    public static async Task<IResult> Get(string id, HttpContext context, RecordStore store, CancellationToken cancellation) =>
        await store.FindAsync(Caller.Of(context).Key!.Shop, id, cancellation) is { } body
            ? new JsonAnswer(body, id, AskAgain)
            : new ProblemAnswer(ProblemKinds.NotFound);

    /// <summary><c>DELETE /v1/assessments/{id}</c>.</summary>
    public static async Task<IResult> Delete(string id, HttpContext context, RecordStore store, CancellationToken cancellation) =>
        await store.DeleteAsync(Caller.Of(context).Key!.Shop, id, cancellation)
            ? Results.NoContent()
            : new ProblemAnswer(ProblemKinds.NotFound);

    private static string IdOf(string shop, Assessment whole)
    {
        byte[] content = [.. Encoding.UTF8.GetBytes(shop + "\n"), .. AnswerJson.Write(whole, AnswerJson.Shapes.Assessment)];
        return Prefix + Convert.ToHexStringLower(SHA256.HashData(content));
    }
}
