using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Comparisons;

public class ComparisonTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/assessments/comparisons";

    private static readonly string Larger = Builds.With(build => build["runs"]![0]!["conductor"]!["size"] = "1/0 AWG");

    [Fact]
    public async Task Builds_stand_side_by_side_with_the_ids_of_their_assessments()
    {
        Answer answer = await service.PostTo(Path, Of(Builds.Small, Larger));
        Assert.Equal(200, answer.Status);
        string[] ids = [.. answer.Json["builds"]!.AsArray().Select(build => (string)build!["id"]!)];
        Assert.Equal((string)(await service.Post(Builds.Small)).Json["id"]!, ids[0]);
        Assert.Equal((string)(await service.Post(Larger)).Json["id"]!, ids[1]);
        JsonNode conductor = answer.Json["differences"]!.AsArray().Single(each => (string)each!["what"]! == "conductor")!;
        Assert.Equal("feed", (string)conductor["id"]!);
        Assert.Equal(["4 AWG copper", "1/0 AWG copper"], conductor["values"]!.AsArray().Select(value => (string)value!));
        Assert.NotEmpty(answer.Json["safetyNotes"]!.AsArray());
    }

    [Fact]
    public async Task The_same_builds_give_the_same_bytes() => Assert.Equal(
        (await service.PostTo(Path, Of(Builds.Small, Larger))).Text, (await service.PostTo(Path, Of(Builds.Small, Larger))).Text);

    [Fact]
    public async Task A_fault_names_its_build()
    {
        string faulty = Builds.With(build => build["runs"]![1]!["length"] = "16");
        Answer answer = await service.PostTo(Path, Of(Builds.Small, faulty));
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        Assert.Contains(answer.Faults, fault => fault.Pointer == "/builds/1/runs/1/length");
    }

    [Fact]
    public async Task A_fault_of_the_content_names_its_build_too()
    {
        string faulty = Builds.With(build => build["runs"]![1]!["from"] = "nowhere");
        Answer answer = await service.PostTo(Path, Of(faulty, Builds.Small));
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        Assert.All(answer.Faults, fault => Assert.StartsWith("/builds/0/", fault.Pointer, StringComparison.Ordinal));
    }

    /// <summary>It would be worked out at length and shown nowhere.</summary>
    [Fact]
    public async Task What_a_build_includes_is_refused()
    {
        string including = Builds.With(build => build["include"] = new JsonArray("headroom"));
        Answer answer = await service.PostTo(Path, Of(Builds.Small, including));
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        Assert.Equal([("/builds/1/include", "comparison.include")], answer.Faults);
    }

    [Theory]
    [InlineData(1, "items.too-few")]
    [InlineData(7, "items.too-many")]
    public async Task Two_to_six_are_compared(int count, string code)
    {
        Answer answer = await service.PostTo(Path, Of([.. Enumerable.Repeat(Builds.Small, count)]));
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        Assert.Contains(("/builds", code), answer.Faults);
    }

    private static string Of(params string[] builds) => $$"""{ "builds": [ {{string.Join(",", builds)}} ] }""";
}
