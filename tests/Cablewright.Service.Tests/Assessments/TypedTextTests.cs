using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>What people type in a shop's form is read as it is meant (common practice, no source).</summary>
public class TypedTextTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Typed = """
        {
          "units": "us",
          "amplifiers": [ { "id": "bass", "ratedOutput": "500 watts RMS" } ],
          "runs": [ { "id": "feed", "from": "battery", "to": "bass", "length": "16' 6\"",
            "conductor": { "size": "4 gauge", "material": "OFC" }, "fuse": { "rating": "80 amps" } } ]
        }
        """;

    [Fact]
    public async Task A_build_as_people_type_it_is_the_same_as_one_in_the_contract_s_words()
    {
        JsonNode typed = (await service.Post(Typed)).Json;
        JsonNode written = (await service.Post(Typed
            .Replace("500 watts RMS", "500 W", StringComparison.Ordinal)
            .Replace("16' 6\\\"", "16.5 ft", StringComparison.Ordinal)
            .Replace("4 gauge", "4 AWG", StringComparison.Ordinal)
            .Replace("OFC", "copper", StringComparison.Ordinal)
            .Replace("80 amps", "80 A", StringComparison.Ordinal))).Json;
        Assert.Equal("copper", (string)typed["runs"]![0]!["conductor"]!["material"]!);
        Assert.Equal(written["runs"]!.ToJsonString(), typed["runs"]!.ToJsonString());
        Assert.Equal((string)written["summary"]!, (string)typed["summary"]!);
    }

    [Fact]
    public async Task A_gauge_off_a_label_is_an_assumption()
    {
        JsonNode assumed = (await service.Post(Typed)).Json["assumptions"]!.AsArray()
            .Single(each => (string)each!["pointer"]! == "/runs/0/conductor/size")!;
        Assert.Equal("4 AWG", (string)assumed["value"]!);
        Assert.Contains("may hold less", (string)assumed["reason"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CCA", "copper-clad-aluminium")]
    [InlineData("cca", "copper-clad-aluminium")]
    [InlineData("tinned OFC", "tinned-copper")]
    public async Task A_link_reads_the_same_words(string typed, string material)
    {
        Answer answer = await service.Get(
            $"/v1/assessments/quick?ratedOutput=300%20watts&length=15'&size=1/0&material={Uri.EscapeDataString(typed)}");
        Assert.Equal(200, answer.Status);
        Assert.Equal(material, (string)answer.Json["runs"]![0]!["conductor"]!["material"]!);
    }

    [Fact]
    public async Task Another_word_is_refused()
    {
        Answer answer = await service.Post(Typed.Replace("OFC", "silver", StringComparison.Ordinal));
        Assert.Equal(400, answer.Status);
        Assert.Contains("copper-clad-aluminium", answer.Text, StringComparison.Ordinal);
    }
}
