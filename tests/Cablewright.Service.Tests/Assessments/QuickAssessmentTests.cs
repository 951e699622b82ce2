using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

public class QuickAssessmentTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Address = "/v1/assessments/quick";
    private const string Full =
        Address
            + "?ratedOutput=1000%20W&length=16%20ft&size=4%20AWG&material=copper&chargingVoltage=13.8%20V&efficiency=75%20%25";

    [Theory]
    [InlineData(Full)]
    [InlineData(Address + "?ratedOutput=1000+W&length=16+ft")]
    [InlineData(Address + "?ratedOutput=1000+W&length=16+ft&amplifierClass=D&programme=dynamic")]
    [InlineData(Address + "?amplifierFuse=60+A&length=16+ft")]
    [InlineData(Address + "?ratedOutput=1500+W&length=5.2+m&amplifierFuse=90+A&fuse=125+A&alternatorCurrent=120+A")]
    [InlineData(Address + "?ratedOutput=1.2%20kW&length=5%20m&units=metric&material=aluminium")]
    public async Task Posting_the_build_of_the_answer_gives_the_same_assessment(string address)
    {
        Answer quick = await service.Get(address);
        Assert.Equal(200, quick.Status);
        JsonObject answer = quick.Json.AsObject();
        JsonNode build = answer["build"]!;
        answer.Remove("build");
        Assert.Equal(answer.ToJsonString(), (await service.Post(build.ToJsonString())).Json.ToJsonString());
    }

    [Fact]
    public async Task The_build_of_the_answer_says_what_was_asked()
    {
        JsonNode build = (await service.Get(Full)).Json["build"]!;
        Assert.Equal("1000 W", (string)build["amplifiers"]![0]!["ratedOutput"]!);
        Assert.Equal("75 %", (string)build["amplifiers"]![0]!["efficiency"]!);
        Assert.Equal("16 ft", (string)build["runs"]![0]!["length"]!);
        Assert.Equal("4 AWG", (string)build["runs"]![0]!["conductor"]!["size"]!);
        Assert.Equal("copper", (string)build["runs"]![0]!["conductor"]!["material"]!);
        Assert.Equal("13.8 V", (string)build["vehicle"]!["chargingVoltage"]!);
    }

    /// <summary>1500 W of label over own fuses of 90 A, behind a fuse of 100 A, on an alternator of 120 A.</summary>
    [Fact]
    public async Task The_fuses_and_the_alternator_of_the_query_count()
    {
        Answer answer = await service.Get(
            Address + "?ratedOutput=1500+W&length=17+ft&amplifierFuse=90+A&fuse=100+A&alternatorCurrent=120+A");
        Assert.Equal("90 A", (string)answer.Json["build"]!["amplifiers"]![0]!["fuse"]!);
        Assert.Equal(100, (double)answer.Json["runs"]![0]!["fuse"]!["ratingAmps"]!);
        Assert.Equal("given", (string)answer.Json["runs"]![0]!["fuse"]!["decided"]!);
        Assert.DoesNotContain("charging judged", (string)answer.Json["summary"]!);
        Assert.Contains(
            answer.Json["findings"]!.AsArray(), finding => (string)finding!["code"]! == "amplifier.rating-above-fuse");
    }

    [Fact]
    public async Task A_caller_that_has_the_answer_is_told_so()
    {
        Answer first = await service.Get(Full);
        Answer again = await service.Get(Full, ("If-None-Match", first.Headers["ETag"]));
        Assert.Equal(304, again.Status);
        Assert.Empty(again.Body);
        Assert.Equal(first.Headers["ETag"], again.Headers["ETag"]);
        Assert.Contains("max-age", first.Headers["Cache-Control"]);
        Assert.Equal(200, (await service.Get(Full, ("If-None-Match", "\"something-else\""))).Status);
    }

    [Theory]
    [InlineData("?length=16%20ft", 400, "/ratedOutput", "parameter.missing", null)]
    [InlineData("?ratedOutput=1000%20W&lenght=16%20ft&length=16%20ft", 400, "/lenght", "parameter.unknown", "length")]
    [InlineData("?ratedOutput=1000%20W&Length=3%20m&length=16%20ft", 400, "/Length", "parameter.unknown", "length")]
    [InlineData("?ratedOutput=1000%20W&length=16%20ft&length=17%20ft", 400, "/length", "parameter.repeated", null)]
    [InlineData("?ratedOutput=1000%20W&length=16%20ft&material=cooper", 400, "/material", "word.unknown", "copper")]
    [InlineData("?ratedOutput=1000%20W&length=16", 422, "/length", "quantity.unit-missing", null)]
    [InlineData("?ratedOutput=1000%20W&length=16%20V", 422, "/length", "quantity.wrong-unit", null)]
    [InlineData("?ratedOutput=1000%20W&length=16%20ft&size=4", 422, "/size", "size.unreadable", null)]
    [InlineData(
        "?ratedOutput=1000%20W&length=16%20ft&chargingVoltage=400%20V", 422, "/chargingVoltage", "quantity.too-large", null)]
    [InlineData("?ratedOutput=1000%20W&length=16%20ft&efficiency=175%20%25", 422, "/efficiency", "quantity.too-large", null)]
    public async Task A_fault_names_its_parameter(string query, int status, string pointer, string code, string? meant)
    {
        Answer answer = await service.Get(Address + query);
        Assert.Equal(status, answer.Status);
        Assert.Equal([(pointer, code)], answer.Faults);
        if (meant is not null) Assert.Contains($"did you mean \"{meant}\"", answer.Text.Replace("\\\"", "\""));
    }
}
