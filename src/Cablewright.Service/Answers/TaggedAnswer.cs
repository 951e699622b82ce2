using System.Security.Cryptography;
using System.Text.Json.Serialization.Metadata;

namespace Cablewright.Service.Answers;

/// <summary>An answer whose entity tag is the SHA-256 of its bytes.</summary>
internal static class TaggedAnswer
{
    /// <summary>Writes the answer to a body.</summary>
    public static JsonAnswer Of<T>(T answer, JsonTypeInfo<T> shape) => Of(AnswerJson.Write(answer, shape), Caching.AskAgain);

    /// <summary>Writes an answer that does not change while the process runs; to be written once.</summary>
    public static JsonAnswer Fixed<T>(T answer, JsonTypeInfo<T> shape) => Fixed(AnswerJson.Write(answer, shape));

    /// <summary>The same of one that is already written.</summary>
    public static JsonAnswer Fixed(byte[] json) => Of(json, Caching.Shared);

    private static JsonAnswer Of(byte[] json, string cacheControl) =>
        new(json, Convert.ToHexStringLower(SHA256.HashData(json)), cacheControl);
}
