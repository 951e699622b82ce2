using Cablewright.Contract;
using Cablewright.Service.Assessments;
using Cablewright.Service.Computing;
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
        try
        {
            return await AnswerAll(lines.Read(cancellation), context, wanted, log, cancellation);
        }
        catch (IOException broken) when (!cancellation.IsCancellationRequested)
        {
            if (!context.Response.HasStarted) return RequestBodies.Refuse(context.Request, broken);
            // The answers so far stand, and the end that is missing after them says that they are not all.
            context.Abort();
            return Results.Empty;
        }
    }

    private static async Task<IResult> AnswerArray(
        HttpContext context, BatchForm wanted, Serilog.ILogger log, CancellationToken cancellation)
    {
        RequestBodies bodies = context.RequestServices.GetRequiredService<RequestBodies>();
        (WholeBody? body, ProblemAnswer? refusal) = await bodies.Read(context.Request, ContractLimits.BatchBytes, cancellation);
        using (body)
        {
            if (body is null) return refusal ?? BuildArray.TooLarge();
            (IReadOnlyList<BuildText> builds, ProblemAnswer? problem) = BuildArray.Read(body.Bytes);
            return problem is null
                ? await AnswerAll(builds.ToAsyncEnumerable(), context, wanted, log, cancellation)
                : problem;
        }
    }

    private static async Task<IResult> AnswerAll(
        IAsyncEnumerable<BuildText> builds,
        HttpContext context,
        BatchForm wanted,
        Serilog.ILogger log,
        CancellationToken cancellation)
    {
        Computations computations = context.RequestServices.GetRequiredService<Computations>();
        WorkCharges charges = context.RequestServices.GetRequiredService<WorkCharges>();
        var answering = new BatchAnswering(
            (build, stop) => computations.RunLine(context, computation => Answering.Answer(build, computation), stop),
            context.TraceIdentifier,
            log);
        var writer = new BatchWriter(context.Response, wanted);
        IAsyncEnumerable<BuildText> paced = BatchPace.Of(builds, charges, context, cancellation);
        await InOrder.Run(paced, answering.Answer, writer.Write, Environment.ProcessorCount, cancellation);
        await writer.End(cancellation);
        return Results.Empty;
    }
}
