using System.Globalization;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

public class IdentityTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task The_same_request_gives_the_same_bytes_in_another_host_and_culture()
    {
        Answer here = await service.Post(Builds.Small);
        CultureInfo before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat =
            new NumberFormatInfo { NumberDecimalSeparator = ",", NumberGroupSeparator = ".", NegativeSign = "\u2212" };
        try
        {
            CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = comma;
            await using var other = new ServiceFixture();
            Assert.Equal(here.Body, (await other.Post(Builds.Small)).Body);
        }
        finally
        {
            CultureInfo.DefaultThreadCurrentCulture = null;
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("12 ft", "3.6576 m")]
    [InlineData("12 ft", "144 in")]
    [InlineData("12 ft", "11 ft 12 in")]
    public async Task The_same_length_in_another_unit_is_the_same_question(string one, string other) =>
        Assert.Equal(await BodyWithLength(one), await BodyWithLength(other));

    [Theory]
    [InlineData("/limits/engineOffTime", "2 h", "7200 s")]
    [InlineData("/vehicle/standbyLoad", "1.5 A", "1500 mA")]
    [InlineData("/vehicle/batteries/0/ratingTime", "20 h", "1200 min")]
    [InlineData("/vehicle/batteries/0/reserveCapacity", "115 min", "6900 s")]
    [InlineData("/vehicle/alternator/idleSpeed", "800 rpm", "800 1/min")]
    public async Task The_same_figure_in_another_unit_is_the_same_question(string pointer, string one, string other) =>
        Assert.Equal(
            await Id(Builds.With(build => Set(build, pointer, one))), await Id(Builds.With(build => Set(build, pointer, other))));

    [Fact]
    public async Task The_order_of_members_does_not_matter()
    {
        string turned = Builds.With(build =>
        {
            JsonObject whole = build.AsObject();
            foreach ((string name, JsonNode? member) in whole.Reverse().ToArray())
            {
                whole.Remove(name);
                whole.Add(name, member);
            }
        });
        Assert.NotEqual(JsonNode.Parse(Builds.Small)!.ToJsonString(), turned);
        Assert.Equal(await Id(Builds.Small), await Id(turned));
    }

    [Theory]
    [InlineData("/runs/0/length", "12.1 ft")]
    [InlineData("/runs/0/conductor/insulationRating", "90 C")]
    [InlineData("/runs/1/jointResistance", "0.3 mOhm")]
    [InlineData("/units", "metric")]
    [InlineData("/amplifiers/0/efficiency", "79 %")]
    [InlineData("/limits/maxDrop", "4 %")]
    public async Task Another_question_has_another_id(string pointer, string value) =>
        Assert.NotEqual(await Id(Builds.Small), await Id(Builds.With(build => Set(build, pointer, value))));

    private static void Set(JsonNode build, string pointer, string value)
    {
        string[] path = pointer.Split('/')[1..];
        JsonNode at = build;
        foreach (string step in path[..^1])
            at = int.TryParse(step, CultureInfo.InvariantCulture, out int index) ? at[index]! : at[step] ??= new JsonObject();
        at[path[^1]] = value;
    }

    private async Task<string> Id(string body) => (string)(await service.Post(body)).Json["id"]!;

    private async Task<byte[]> BodyWithLength(string length) =>
        (await service.Post(Builds.With(build => build["runs"]![0]!["length"] = length))).Body;
}
