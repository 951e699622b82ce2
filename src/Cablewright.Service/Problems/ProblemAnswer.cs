using Cablewright.Contract.Problems;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Problems;

/// <summary>An answer that says why there is none, as RFC 9457 has it.</summary>
internal sealed class ProblemAnswer(ProblemKind kind, string detail, IReadOnlyList<ProblemError> errors) : IResult
{
    public const string ContentType = "application/problem+json";

    public ProblemAnswer(ProblemKind kind)
        : this(kind, kind.Meaning, [])
    {
    }

    /// <summary>After how long it is worth trying again, where more is known than the kind says.</summary>
    public TimeSpan? RetryAfter { get; init; }

    /// <summary>What an address names is not there.</summary>
    /// <param name="missing">What is not, as a sentence.</param>
    public static ProblemAnswer NotFound(string missing) => new(ProblemKinds.NotFound, missing, []);

    /// <summary>The problem itself.</summary>
    public Problem Of(ProblemOrigin origin) => new()
    {
        Type = origin.Pages + kind.Code,
        Title = kind.Title,
        Status = kind.Status,
        Detail = detail,
        Code = kind.Code,
        TraceId = origin.TraceId,
        Errors = errors,
    };

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        HttpResponse response = httpContext.Response;
        response.StatusCode = kind.Status;
        response.ContentType = ContentType;
        response.Headers.CacheControl = "no-store";
        if ((RetryAfter is { } wait ? (int)Math.Ceiling(wait.TotalSeconds) : kind.RetryAfterSeconds) is { } seconds)
            response.Headers.RetryAfter = seconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (kind.Status == StatusCodes.Status401Unauthorized) response.Headers.WWWAuthenticate = "Bearer";
        byte[] body = AnswerJson.Write(Of(ProblemOrigin.Of(httpContext)), AnswerJson.Shapes.Problem);
        response.ContentLength = body.Length;
        return response.Body.WriteAsync(body, httpContext.RequestAborted).AsTask();
    }
}
