namespace Cablewright.Service.Answers;

/// <summary>Who may keep an answer, and for how long (RFC 9111).</summary>
internal static class Caching
{
    /// <summary>
    /// The same for everyone until the next release: a cache on the way may keep it and give it to others, so that nothing in it
    /// is about one request.
    /// </summary>
    public const string Shared = "public, max-age=3600";

    /// <summary>One shop's: its caller may keep it, and asks each time whether it still holds.</summary>
    public const string Private = "private, no-cache";

    /// <summary>The answer to a body.</summary>
    public const string AskAgain = "no-cache";
}
