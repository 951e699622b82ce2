using System.Security.Cryptography;
using System.Text.Json.Serialization.Metadata;

namespace Cablewright.Service.Answers;

/// <summary>An answer that does not change while the process runs: written once, with its tag.</summary>
internal sealed class FixedAnswer
{
    private const string KeepForAnHour = "public, max-age=3600";

    private readonly JsonAnswer answer;

    private FixedAnswer(byte[] body) =>
        answer = new JsonAnswer(body, Convert.ToHexStringLower(SHA256.HashData(body)), KeepForAnHour);

    /// <summary>Writes the answer.</summary>
    public static FixedAnswer Of<T>(T value, JsonTypeInfo<T> shape) => new(AnswerJson.Write(value, shape));

    /// <summary>An answer that is already written.</summary>
    public static FixedAnswer Of(byte[] json) => new(json);

    /// <summary>Gives the answer.</summary>
    public IResult Answer() => answer;
}
