using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Judgement;

/// <summary>
/// Forty jobs whose verdicts a practitioner wrote down before the code that is held against them; each names its reason and its
/// source. See <c>panel/README.md</c>.
/// </summary>
public class PanelTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly string Folder =
        Path.Combine(Repository.Root, "tests/Cablewright.Service.Tests/Judgement/panel");

    public static TheoryData<string> Jobs =>
        [.. Directory.GetFiles(Folder, "*.json").Select(file => Path.GetFileNameWithoutExtension(file))
            .Order(StringComparer.Ordinal)];

    /// <summary>The build of a job.</summary>
    public static async Task<string> BuildOf(string name) => (await JobOf(name))["build"]!.ToJsonString();

    private static async Task<JsonNode> JobOf(string name) =>
        JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(Folder, name + ".json")))!;

    [Fact]
    public void There_are_forty() => Assert.Equal(40, Jobs.Count);

    [Theory]
    [MemberData(nameof(Jobs))]
    public async Task The_service_judges_as_the_practitioner_does(string name)
    {
        JsonNode job = await JobOf(name);
        Answer answer = await service.Post(job["build"]!.ToJsonString());
        Assert.Equal(200, answer.Status);
        Assert.Equal(job["verdicts"]!.ToJsonString(), answer.Json["verdicts"]!.ToJsonString());
        string worst = answer.Json["findings"]!.AsArray().FirstOrDefault()?.ToJsonString() ?? "";
        Assert.All(
            job["says"]!.AsArray().Select(word => (string)word!),
            word => Assert.Contains(word, worst, StringComparison.OrdinalIgnoreCase));
    }
}
