using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

public class PostAssessmentTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task A_build_is_answered_with_its_assessment()
    {
        Answer answer = await service.Post(Builds.Small);
        Assert.Equal(200, answer.Status);
        Assert.Equal("application/json", answer.ContentType);
        Assert.Matches("^asm_[0-9a-f]{64}$", (string)answer.Json["id"]!);
        Assert.Equal('"' + (string)answer.Json["id"]! + '"', answer.Headers["ETag"]);
        Assert.Equal(["feed", "ground"], answer.Json["runs"]!.AsArray().Select(run => (string)run!["id"]!));
        Assert.NotEmpty(answer.Json["safetyNotes"]!.AsArray());
        Assert.Null(answer.Json["build"]);
    }

    /// <summary>P = V I at the terminals and P = 500 W / 0.8, from the definitions of power and efficiency.</summary>
    [Fact]
    public async Task The_figures_obey_the_definitions_of_power_and_drop()
    {
        JsonNode amplifier = (await service.Post(Builds.Small)).Json["amplifiers"]![0]!;
        double volts = (double)amplifier["terminalVolts"]!, amps = (double)amplifier["peakCurrentAmps"]!;
        Assert.Equal(625, volts * amps, 0.01);
        Assert.Equal(13.8, volts + (double)amplifier["dropVolts"]!, 0.0001);
    }

    [Fact]
    public async Task A_failing_build_is_answered_with_200()
    {
        Answer answer = await service.Post(Builds.With(build => build["runs"]![0]!["fuse"]!["rating"] = "500 A"));
        Assert.Equal(200, answer.Status);
        Assert.Equal("fail", (string)answer.Json["verdict"]!);
    }

    [Fact]
    public async Task Nothing_is_null_in_an_answer() => Assert.DoesNotContain("null", (await service.Post(Builds.Small)).Text);

    [Theory]
    [InlineData("us")]
    [InlineData("metric")]
    public async Task Sentences_are_written_in_the_units_asked_for(string units)
    {
        Answer answer = await service.Post(Builds.With(build =>
        {
            build["units"] = units;
            build["runs"]![0]!["fuse"]!["distanceFromSource"] = "1 m";
        }));
        string message = answer.Json["findings"]!.AsArray()
            .Single(finding => (string)finding!["pointer"]! == "/runs/0/fuse/distanceFromSource")!["message"]!.GetValue<string>();
        Assert.Contains(units == "us" ? " in" : "m", message);
        Assert.Equal(units == "us", message.Contains(" in ") || message.Contains(" ft"));
    }
}
