using System.Text.Json.Serialization.Metadata;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>Answers a request that carries one JSON document.</summary>
internal static class JsonBody
{
    /// <summary>Reads the document, and answers with what is wrong with its form or with what an endpoint makes of it.</summary>
    public static Task<IResult> Answer<T>(
        HttpRequest request, JsonTypeInfo<T> shape, Func<T, IResult> answer, CancellationToken cancellation)
        where T : class =>
        Answer(request, shape, document => Task.FromResult(answer(document)), cancellation);

    /// <inheritdoc cref="Answer{T}(HttpRequest, JsonTypeInfo{T}, Func{T, IResult}, CancellationToken)"/>
    public static async Task<IResult> Answer<T>(
        HttpRequest request, JsonTypeInfo<T> shape, Func<T, Task<IResult>> answer, CancellationToken cancellation)
        where T : class
    {
        if (!IsPlainJson(request)) return new ProblemAnswer(ProblemKinds.UnsupportedMediaType);
        Shaped<T> body = await ShapeReader.ReadAsync(request, shape, cancellation: cancellation);
        return body.Outcome == ShapeOutcome.Read ? await answer(body.Value!) : FaultyRequest.Of(body);
    }

    private static bool IsPlainJson(HttpRequest request) =>
        JsonMediaType.Announces(request.ContentType) && request.Headers.ContentEncoding.Count == 0;
}
