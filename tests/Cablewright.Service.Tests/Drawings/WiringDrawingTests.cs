using System.Text.Json.Nodes;
using System.Xml.Linq;
using Cablewright.Contract;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Wiring;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Fuzz;
using Cablewright.Service.Tests.Judgement;
using Cablewright.Service.Tests.Support;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>The wiring drawing: nothing lies upon anything else, whatever is drawn, and everything is there.</summary>
public class WiringDrawingTests(ServiceFixture service, ITestOutputHelper output) : IClassFixture<ServiceFixture>
{
    private const int Generated = 500;
    private const double Telephone = 360;

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    public static TheoryData<string> Jobs => PanelTests.Jobs;

    [Theory]
    [MemberData(nameof(Names))]
    public async Task An_example_is_drawn_whole(string name) =>
        Assert.Empty(await TroublesOf("example-" + name, ExampleFiles.Request(name)));

    [Theory]
    [MemberData(nameof(Jobs))]
    public async Task A_job_of_the_panel_is_drawn_whole(string name) =>
        Assert.Empty(await TroublesOf("job-" + name, await PanelTests.BuildOf(name)));

    [Fact]
    public async Task Random_builds_are_drawn_whole()
    {
        output.WriteLine($"{FuzzRun.SeedVariable}={FuzzRun.Seed}");
        int drawn = 0, sent = 0;
        var troubles = new List<string>();
        await Parallel.ForEachAsync(FuzzRun.Cases(Generated * 3 / 2), async (number, _) =>
        {
            string body = RandomBuild.Of(new Dice(FuzzRun.Seed, number)).ToJsonString();
            Interlocked.Increment(ref sent);
            if (await service.To(body) is not var (build, answer)) return;
            Interlocked.Increment(ref drawn);
            IEnumerable<string> found = TroublesOf(build, answer, WiringDrawing.Svg(build, answer));
            lock (troubles) troubles.AddRange(found.Select(trouble => $"{FuzzRun.Again(number)}: {trouble}"));
        });
        output.WriteLine($"{drawn} of {sent} builds drawn");
        Assert.Empty(troubles);
        Assert.True(drawn >= Math.Min(Generated, sent * 2 / 3), $"only {drawn} of {sent} builds are legal");
    }

    /// <summary>All that are accepted without a key: two batteries, two main runs side by side, one common ground.</summary>
    [Fact]
    public async Task One_to_sixteen_amplifiers_are_drawn_whole_and_no_wider_than_a_telephone()
    {
        for (int count = 1; count <= ContractLimits.AmplifiersWithoutKey; count++)
        {
            string body = Shared(count);
            Assert.Empty(await TroublesOf($"shared-{count}", body));
            (Build build, Assessment answer) = (await service.To(body))!.Value;
            Assert.Equal(Telephone, LayoutMaker.Of(build, answer).Width);
        }
    }

    /// <summary>The battery's cable and the strap meet at the engine, on which the alternator's case sits.</summary>
    [Fact]
    public async Task The_engine_is_drawn_as_a_place_where_grounds_meet()
    {
        const string Body = """
            {
              "vehicle": { "batteries": [ { "id": "starter" } ], "alternator": { "ratedCurrent": "120 A" } },
              "amplifiers": [ { "id": "bass", "ratedOutput": "500 W" } ],
              "runs": [
                { "id": "main", "from": "starter", "to": "bass", "length": "5 m" },
                { "id": "cable", "from": "starter", "to": "engine", "length": "0.6 m" },
                { "id": "strap", "from": "engine", "to": "body", "length": "0.4 m" },
                { "id": "pigtail", "from": "starter", "to": "body", "length": "0.4 m" }
              ]
            }
            """;
        Assert.Empty(await TroublesOf("engine", Body));
        (Build build, Assessment answer) = (await service.To(Body))!.Value;
        string svg = WiringDrawing.Svg(build, answer);
        Assert.Contains("Engine block", svg, StringComparison.Ordinal);
        Assert.Contains("its case sits on the engine", svg, StringComparison.Ordinal);
        string without = Body.Replace("\"engine\"", "\"body\"", StringComparison.Ordinal)
            .Replace("{ \"id\": \"strap\", \"from\": \"body\", \"to\": \"body\", \"length\": \"0.4 m\" },", "",
                StringComparison.Ordinal);
        (build, answer) = (await service.To(without))!.Value;
        Assert.DoesNotContain("on the engine", WiringDrawing.Svg(build, answer), StringComparison.Ordinal);
    }

    private static string Shared(int count)
    {
        int[] numbers = [.. Enumerable.Range(1, count)];
        return new JsonObject
        {
            ["vehicle"] = new JsonObject { ["batteries"] = new JsonArray(Named("starter"), Named("rear")) },
            ["amplifiers"] = new JsonArray([.. numbers.Select(number => With(Named("amp" + number), "ratedOutput", "100 W"))]),
            ["runs"] = new JsonArray(
            [
                Run("link", "starter", "rear"), Run("main", "rear", "block"), Run("main2", "rear", "block"),
                .. numbers.Select(number => Run("feed" + number, "block", "amp" + number)),
                .. numbers.Select(number => Run("ground" + number, "amp" + number, "bar")),
                Run("common", "bar", "body"), Run("strap", "rear", "body"),
            ]),
        }.ToJsonString();

        static JsonObject Named(string id) => new() { ["id"] = id };

        static JsonObject With(JsonObject part, string member, string value)
        {
            part[member] = value;
            return part;
        }

        // Given, so that nothing has to be chosen.
        static JsonObject Run(string id, string from, string to) => new()
        {
            ["id"] = id,
            ["from"] = from,
            ["to"] = to,
            ["length"] = "1 m",
            ["conductor"] = new JsonObject { ["size"] = "50 mm2", ["material"] = "copper" },
        };
    }

    private async Task<IReadOnlyList<string>> TroublesOf(string name, string body)
    {
        if (await service.To(body) is not var (build, answer)) return ["refused"];
        string svg = WiringDrawing.Svg(build, answer);
        await Pictures.Keep(name + ".svg", svg);
        return TroublesOf(build, answer, svg);
    }

    private static IReadOnlyList<string> TroublesOf(Build build, Assessment answer, string svg)
    {
        WiringLayout layout = LayoutMaker.Of(build, answer);
        return
        [
            .. LayoutCheck.Troubles(layout), .. LayoutCheck.Shared(layout), .. LayoutCheck.Missing(XElement.Parse(svg), answer),
        ];
    }
}
