using System.Text.Encodings.Web;
using System.Text.Json;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Examples;

/// <summary>The worked examples: each request with the answer that belongs to it.</summary>
public static class ExampleFiles
{
    private const string RequestEnding = ".request.json";

    private static readonly JsonWriterOptions Readable =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.GetFiles(Repository.Examples, "*" + RequestEnding)
            .Select(path => Path.GetFileName(path)[..^RequestEnding.Length]).Order()];

    public static string Request(string name) => File.ReadAllText(Path.Combine(Repository.Examples, name + RequestEnding));

    public static string AnswerPath(string name) => Path.Combine(Repository.Examples, name + ".answer.json");

    /// <summary>The same JSON, token for token, on lines that can be read.</summary>
    public static byte[] Indented(byte[] json)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Readable))
        using (JsonDocument document = JsonDocument.Parse(json))
            document.WriteTo(writer);
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
