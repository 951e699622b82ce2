using Cablewright.Contract;
using Cablewright.Service.Assessments;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Batches;

/// <summary><c>POST /v1/assessments/batch</c>: many builds in, as many answers out, in the same order.</summary>
internal static class PostBatch
{
    /// <summary>Reads builds and answers them as they come.</summary>
    public static Task<IResult> Answer(HttpContext context, Serilog.ILogger log, CancellationToken cancellation)
    {
        BatchForm? sent = BatchForm.Announced(context.Request);
        if (sent is null) return Task.FromResult<IResult>(new ProblemAnswer(ProblemKinds.UnsupportedMediaType));
        BatchForm wanted = BatchForm.Wanted(context.Request.Headers.Accept, sent);
        return sent == BatchForm.Lines
            ? AnswerLines(context, wanted, log, cancellation)
            : AnswerArray(context, wanted, log, cancellation);
    }

    private static async Task<IResult> AnswerLines(
        HttpContext context, BatchForm wanted, Serilog.ILogger log, CancellationToken cancellation)
    {
        StreamLimits.Set(context);
        var lines = new BuildLines(context.Request.BodyReader);
        return await AnswerAll(lines.Read(cancellation), context, wanted, log, cancellation);
    }

    private static async Task<IResult> AnswerArray(
        HttpContext context, BatchForm wanted, Serilog.ILogger log, CancellationToken cancellation)
    {
        if (context.Request.ContentLength > ContractLimits.BatchBytes) return BuildArray.TooLarge();
        using WholeBody? body = await WholeBody.ReadAsync(context.Request.Body, ContractLimits.BatchBytes, cancellation);
        if (body is null) return BuildArray.TooLarge();
        (IReadOnlyList<BuildText> builds, ProblemAnswer? problem) = BuildArray.Read(body.Bytes);
        return problem is null
            ? await AnswerAll(builds.ToAsyncEnumerable(), context, wanted, log, cancellation)
            : problem;
    }

    private static async Task<IResult> AnswerAll(
        IAsyncEnumerable<BuildText> builds,
        HttpContext context,
        BatchForm wanted,
        Serilog.ILogger log,
        CancellationToken cancellation)
    {
        var answering = new BatchAnswering(Answering.Answer, context.TraceIdentifier, log);
        var writer = new BatchWriter(context.Response, wanted);
        IAsyncEnumerable<BuildText> paced = context.RequestServices.GetRequiredService<BatchPace>().Of(builds, context, cancellation);
        await InOrder.Run(paced, answering.Answer, writer.Write, Environment.ProcessorCount, cancellation);
        await writer.End(cancellation);
        return Results.Empty;
    }
}
