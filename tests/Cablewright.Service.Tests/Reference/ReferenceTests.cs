using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Reference;

public class ReferenceTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Provenances = ["read", "computed", "from memory", "common practice, no source"];

    [Theory]
    [InlineData("/v1/reference/conductors")]
    [InlineData("/v1/reference/fuses")]
    [InlineData("/v1/reference/batteries")]
    [InlineData("/v1/reference/sources")]
    [InlineData("/v1/rulesets")]
    [InlineData("/v1/rulesets/2026.2")]
    public async Task A_table_can_be_kept(string address)
    {
        Answer first = await service.Get(address);
        Assert.Equal((200, "application/json"), (first.Status, first.ContentType));
        Assert.Contains("max-age", first.Headers["Cache-Control"]);
        Assert.Equal(304, (await service.Get(address, ("If-None-Match", "W/\"x\", " + first.Headers["ETag"]))).Status);
        await using var other = new ServiceFixture();
        Assert.Equal(first.Headers["ETag"], (await other.Get(address)).Headers["ETag"]);
    }

    [Theory]
    [InlineData("/v1/reference/conductors")]
    [InlineData("/v1/reference/fuses")]
    [InlineData("/v1/reference/batteries")]
    [InlineData("/v1/rulesets/2026.2")]
    public async Task Every_figure_has_a_source_that_the_list_of_sources_names(string address)
    {
        JsonNode sources = (await service.Get("/v1/reference/sources")).Json["sources"]!;
        HashSet<(string, string)> known = [.. sources.AsArray().Select(Source)];
        JsonNode[] sourced = [.. Objects((await service.Get(address)).Json).Where(row => row["source"] is not null)];
        Assert.NotEmpty(sourced);
        Assert.All(sourced, row => Assert.Contains(Source(row), known));
        Assert.All(sourced, row => Assert.Contains((string)row["provenance"]!, Provenances));
    }

    /// <summary>
    /// IEC 60228:2004, class 5, plain: 25 mm² at most 0.780 ohm/km; 33 CFR 183.425 table 5: 4 AWG at 105 C carries 160 A.
    /// </summary>
    [Fact]
    public async Task The_conductor_tables_hold_the_published_figures()
    {
        JsonNode table = (await service.Get("/v1/reference/conductors")).Json;
        JsonNode size = table["sizes"]!.AsArray().Single(row => (string)row!["size"]! == "25 mm2")!;
        JsonNode copper = size["conductors"]!.AsArray().Single(row => (string)row!["material"]! == "copper")!;
        Assert.Equal(0.780, (double)copper["resistanceMilliohmsPerMetre"]!, 0.0005);
        JsonNode ampacity = table["ampacity"]!.AsArray()
            .Single(row => (string)row!["size"]! == "4 AWG" && (double)row["insulationCelsius"]! == 105)!;
        Assert.Equal(160, (double)ampacity["currentAmps"]!);
    }

    [Fact]
    public async Task A_ruleset_lists_its_figures_and_every_finding()
    {
        JsonNode ruleset = (await service.Get("/v1/rulesets/2026.2")).Json;
        Assert.Contains(
            ruleset["figures"]!.AsArray(), figure => (string)figure!["id"]! == "drop.target" && (double)figure["value"]! == 0.03);
        Assert.NotEmpty(ruleset["findings"]!.AsArray());
        Assert.NotEmpty(ruleset["safetyNotes"]!.AsArray());
    }

    private static (string, string) Source(JsonNode? row) => ((string)row!["source"]!, (string)row["provenance"]!);

    private static IEnumerable<JsonNode> Objects(JsonNode? node) => node switch
    {
        JsonObject whole => whole.SelectMany(member => Objects(member.Value)).Prepend(whole),
        JsonArray list => list.SelectMany(Objects),
        _ => [],
    };
}
