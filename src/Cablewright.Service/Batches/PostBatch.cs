using Cablewright.Contract;
using Cablewright.Contract.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Batches;

/// <summary><c>POST /v1/assessments/batch</c>: many builds in, as many answers out, in the same order.</summary>
internal static class PostBatch
{
    public static Operation Operation => new(
        "assessBatch", Tag.Assessments, "Assess many builds",
        "Each build is answered as it would be by itself, with the status that it would get; a bad one fails alone. Answers come "
        + "in the order of the builds and are sent as soon as they are known. An array of builds "
        + $"(at most {ContractLimits.BatchBuilds}, {ContractLimits.BatchBytes / 1024 / 1024} MB) is read whole before the first "
        + $"answer. Lines of builds (`{JsonMediaType.Lines}`, at most {ContractLimits.BodyBytes / 1024} KB a line, any number of "
        + "lines, blank ones left out) are read as they come and no faster than they are answered: read answers "
        + "while you still send, or, where a client cannot, send arrays. Give up the connection and the work stops. "
        + "A build that the service has no place for yet waits; one that takes too long is answered with 503 by itself. "
        + "The answer has the form of the request, unless `Accept` prefers the other. Pointers and columns count from the start "
        + "of the build.")
    {
        Computes = true,
        IsBatch = true,
        Body = RequestBody.ListOf(AnswerJson.Shapes.Build, () => QuickBuild.Example),
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/v1/assessments/batch", Answer).DescribedAs<IReadOnlyList<BatchAnswer>>(Operation);

    private static Task<IResult> Answer(HttpContext context, Serilog.ILogger log, CancellationToken cancellation)
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
            ProblemOrigin.Of(context),
            log);
        var writer = new BatchWriter(context.Response, wanted);
        IAsyncEnumerable<BuildText> paced = BatchPace.Of(builds, charges, context, cancellation);
        await InOrder.Run(paced, answering.Answer, writer.Write, Environment.ProcessorCount, cancellation);
        await writer.End(cancellation);
        return Results.Empty;
    }
}
