using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Examples;

/// <summary>
/// The committed answers are the service's, byte for byte but for the blanks that make them readable.
/// <c>CABLEWRIGHT_REFRESH=1 dotnet test tests/Cablewright.Service.Tests</c> writes them anew.
/// </summary>
public class ExampleTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly bool Refreshes = Environment.GetEnvironmentVariable("CABLEWRIGHT_REFRESH") == "1";

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    [Fact]
    public void There_are_eight() => Assert.Equal(8, ExampleFiles.Names.Count);

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_service_gives_the_committed_answer(string name)
    {
        Answer answer = await service.Post(ExampleFiles.Request(name));
        Assert.Equal(200, answer.Status);
        byte[] readable = ExampleFiles.Indented(answer.Body);
        if (Refreshes) await File.WriteAllBytesAsync(ExampleFiles.AnswerPath(name), readable);
        Assert.Equal(await File.ReadAllTextAsync(ExampleFiles.AnswerPath(name)), System.Text.Encoding.UTF8.GetString(readable));
    }

    /// <summary>One line of it is refused, and names the request.</summary>
    [Fact]
    public async Task The_service_gives_the_committed_answers_to_the_batch()
    {
        string request = await File.ReadAllTextAsync(Path.Combine(Repository.Examples, "batch.request.ndjson"));
        string path = Path.Combine(Repository.Examples, "batch.answer.ndjson");
        Answer answer = await service.PostBatch(
            request, "application/x-ndjson", ("X-Correlation-Id", "example"),
            ("Host", "cablewright.example"));
        if (Refreshes) await File.WriteAllBytesAsync(path, answer.Body);
        Assert.Equal(await File.ReadAllTextAsync(path), answer.Text);
        Assert.Equal([200, 400, 200], answer.Lines.Select(line => (int)line["status"]!));
    }

    /// <summary>
    /// The usual kits of the trade (common practice, no source): 300 W on 8 AWG, 500 W on 4 AWG, 1000 W on 1/0.
    /// </summary>
    [Theory]
    [InlineData("small-run")]
    [InlineData("half-kilowatt")]
    [InlineData("kilowatt")]
    public async Task An_ordinary_kit_passes(string name) => Assert.Equal("pass", await Verdict(name));

    [Fact]
    public async Task The_copper_clad_run_fails() => Assert.Equal("fail", await Verdict("copper-clad"));

    private async Task<string> Verdict(string name) => (string)(await service.Post(ExampleFiles.Request(name))).Json["verdict"]!;
}
