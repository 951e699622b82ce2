using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>What a failing answer says would help is done to the request as it says, and then helps.</summary>
public class FeasibilityTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task A_build_that_stands_has_none() => Assert.Null((await service.Post(Builds.Small)).Json["feasibility"]);

    [Theory]
    [InlineData("us", "30 ft", "4 AWG", "copper-clad-aluminium", "80 A", "500 W")]
    [InlineData("metric", "9 m", "4 AWG", "copper", "80 A", "800 W")]
    [InlineData("us", "12 ft", "8 AWG", "copper", "250 A", "500 W")]
    [InlineData("metric", "3.5 m", "10 AWG", "aluminium", "30 A", "900 W")]
    public async Task Each_change_made_to_the_request_does_what_it_says(
        string units, string length, string size, string material, string fuse, string power)
    {
        string request = Builds.With(build =>
        {
            build["units"] = units;
            build["amplifiers"]![0]!["ratedOutput"] = power;
            JsonNode feed = build["runs"]![0]!;
            feed["length"] = length;
            feed["conductor"] = new JsonObject { ["size"] = size, ["material"] = material };
            feed["fuse"]!["rating"] = fuse;
            feed["fuse"]!["distanceFromSource"] = "24 in";
        });
        JsonNode answer = (await service.Post(request)).Json;
        JsonArray changes = answer["feasibility"]!["changes"]!.AsArray();
        Assert.NotEmpty(changes);
        foreach (JsonNode? change in changes)
        {
            JsonNode changed = JsonNode.Parse(request)!;
            foreach (JsonNode? edit in change!["edits"]!.AsArray()) Make(changed, (string)edit!["pointer"]!, (string?)edit["to"]);
            JsonNode after = (await service.Post(changed.ToJsonString())).Json;
            Assert.NotEqual("fail", (string)after["verdict"]!);
            Assert.Equal((string)change["verdict"]!, (string)after["verdict"]!);
        }
    }

    private static void Make(JsonNode build, string pointer, string? to)
    {
        string[] path = pointer.Split('/')[1..];
        JsonNode at = build;
        foreach (string part in path[..^1])
            at = at is JsonArray list ? list[int.Parse(part)]! : at[part] ?? (at[part] = new JsonObject());
        if (to is null) at.AsObject().Remove(path[^1]);
        else at[path[^1]] = path[^1] == "count" ? int.Parse(to) : bool.TryParse(to, out bool flag) ? flag : to;
    }
}
