namespace Cablewright.Service.Answers;

/// <summary>The forms in which an assessment is answered, by what the caller accepts.</summary>
internal static class AnswerForms
{
    public const string Drawing = "image/svg+xml";
    public const string Sheet = "text/html";

    /// <summary>What a caller has to know of them.</summary>
    public const string Description =
        "Accept says in which form it is answered: application/json, where nothing is said; image/svg+xml, the wiring as a "
        + "single-line diagram; text/html, the job sheet, a page to read and to print. All three are of the same assessment.";

    /// <summary>All of them, the one first that is meant where nothing is said.</summary>
    public static readonly string[] All = [JsonAnswer.ContentType, Drawing, Sheet];

    /// <summary>The form that a caller wants most; of several that it wants alike, the first.</summary>
    public static string WantedBy(HttpRequest request) =>
        All.MaxBy(form => ContentNegotiation.Quality(request.Headers.Accept, form))!;
}
