using System.Security.Cryptography;
using System.Text.Json.Serialization.Metadata;

namespace Cablewright.Service.Answers;

/// <summary>An answer whose entity tag is the SHA-256 of its bytes.</summary>
internal static class TaggedAnswer
{
    private const string AskAgain = "no-cache";

    /// <summary>Writes the answer.</summary>
    public static IResult Of<T>(T answer, JsonTypeInfo<T> shape)
    {
        byte[] bytes = AnswerJson.Write(answer, shape);
        return new JsonAnswer(bytes, Convert.ToHexStringLower(SHA256.HashData(bytes)), AskAgain);
    }
}
