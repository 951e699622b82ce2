using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Answers;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Batches;

/// <summary>Answers single builds of a batch.</summary>
/// <param name="answer">Answers a build as it would be by itself.</param>
/// <param name="origin">The request that the batch came in.</param>
/// <param name="log">Where a failure of the service goes.</param>
internal sealed class BatchAnswering(
    Func<Build, CancellationToken, Task<(Assessment? Assessment, ProblemAnswer? Problem)>> answer,
    ProblemOrigin origin,
    Serilog.ILogger log)
{
    /// <summary>The answer as UTF-8. Nothing that goes wrong with one build concerns the others.</summary>
    /// <exception cref="OperationCanceledException">The caller is gone.</exception>
    public async Task<byte[]> Answer(BuildText text, CancellationToken cancellation)
    {
        (Assessment? assessment, ProblemAnswer? refusal) = await Guarded(text, cancellation).ConfigureAwait(false);
        Contract.Problems.Problem? problem = refusal?.Of(origin);
        return AnswerJson.Write(
            new BatchAnswer
            {
                Line = text.Line,
                Status = problem?.Status ?? StatusCodes.Status200OK,
                Assessment = assessment,
                Problem = problem,
            },
            AnswerJson.Shapes.BatchAnswer);
    }

    private async Task<(Assessment?, ProblemAnswer?)> Guarded(BuildText text, CancellationToken cancellation)
    {
        try
        {
            Shaped<Build> body = Read(text);
            return body.Outcome == ShapeOutcome.Read
                ? await answer(body.Value!, cancellation).ConfigureAwait(false)
                : (null, FaultyRequest.Of(body));
        }
        catch (Exception failure) when (!cancellation.IsCancellationRequested)
        {
            log.Error(failure, "Line {Line} of a batch failed", text.Line);
            return (null, new ProblemAnswer(ProblemKinds.Failed));
        }
    }

    private static Shaped<Build> Read(BuildText text) => text.IsTooLarge
        ? ShapeReader.TooLarge<Build>(ShapeReader.MostBytes, "build")
        : ShapeReader.Read(text.Utf8, AnswerJson.Shapes.Build, text.FirstLine);
}
