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
        RequestBodies bodies = request.HttpContext.RequestServices.GetRequiredService<RequestBodies>();
        (WholeBody? whole, ProblemAnswer? refusal) = await bodies.Read(request, ShapeReader.MostBytes, cancellation);
        if (refusal is not null) return refusal;
        Shaped<T> body = Read(whole, shape);
        return body.Outcome == ShapeOutcome.Read ? await answer(body.Value!) : FaultyRequest.Of(body);
    }

    /// <summary>The memory goes back before anything is computed.</summary>
    private static Shaped<T> Read<T>(WholeBody? whole, JsonTypeInfo<T> shape) where T : class
    {
        using (whole) return whole is null
            ? ShapeReader.TooLarge<T>(ShapeReader.MostBytes)
            : ShapeReader.Read(whole.Bytes, shape);
    }

    private static bool IsPlainJson(HttpRequest request) =>
        JsonMediaType.Announces(request.ContentType) && request.Headers.ContentEncoding.Count == 0;
}
